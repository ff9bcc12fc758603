using Generator.Domain;
using Generator.Library.Reading;

namespace Generator.Library.Files;

/// <summary>Reads the props of a brief: what is held in whose hand when the fight begins, and what lies ready.</summary>
internal static class PropPartReader
{
    /// <summary>Props of a brief.</summary>
    /// <param name="root">The brief.</param>
    /// <param name="brief">What has been read of it.</param>
    /// <param name="cast">Its attackers.</param>
    /// <param name="table">Kinds that the library knows.</param>
    public static IReadOnlyList<PropPart> Of(ObjectReader root, Brief brief, Cast cast, PropTable table)
    {
        var props = new List<PropPart>();
        foreach (var entry in root.Objects("props"))
        {
            if (Read(entry, brief, cast, table) is { } prop)
            {
                Check(entry, prop, props, brief);
                props.Add(prop);
            }

            entry.Finish();
        }

        if (props.Count > PropPart.Most)
        {
            root.Refuse("props", $"There are {props.Count} props; there may be {PropPart.Most}.", "Maybe leave out what nobody takes into a hand.");
        }

        return props;
    }

    private static PropPart? Read(ObjectReader entry, Brief brief, Cast cast, PropTable table)
    {
        var (name, word) = (entry.Name("name"), entry.Text("kind"));
        var hand = entry.Word<PropHand>("hand");
        var lies = Place(entry, brief);
        var with = Holder(entry, brief, cast);
        if (!entry.Has("kind"))
        {
            entry.Missing("kind", "\"kind\": \"stick\"");
        }

        if (entry.Has("with") && lies is not null)
        {
            entry.Refuse("with", "It is in somebody's hand and lies on the floor.", "Maybe leave out the one or the other.");
        }
        else if (!entry.Has("with") && !entry.Has("x") && !entry.Has("y") && !entry.Has("bearing") && !entry.Has("distance"))
        {
            entry.Missing("with", "\"with\": \"hero\", or the place where it lies: \"bearing\": \"3\", \"distance\": 1.5");
        }
        else if (!entry.Has("with") && hand is not null)
        {
            entry.Refuse("hand", "What lies on the floor is in no hand.", "Maybe \"with\" is missing.");
        }

        if (word is null || Kind(entry, word, table) is not { } kind)
        {
            return null;
        }

        if (PropFaults.Hand(kind, hand) is { } unfit)
        {
            entry.Refuse("hand", unfit, kind.Hands == 2 ? "Maybe leave \"hand\" out." : "Maybe one of these is meant: left, right.");
        }

        return new PropPart(name ?? kind.Id, kind.Id) { With = lies is null ? with : null, Hand = hand ?? (kind.Hands == 2 ? PropHand.Both : PropHand.Right), X = lies?.X ?? default, Y = lies?.Y ?? default };
    }

    private static void Check(ObjectReader entry, PropPart prop, List<PropPart> others, Brief brief)
    {
        if (others.Exists(o => string.Equals(o.Name, prop.Name, StringComparison.OrdinalIgnoreCase)))
        {
            entry.Refuse(entry.Has("name") ? "name" : "kind", $"Two props are called {FieldText.Quote(prop.Name)}.", "Maybe add a \"name\", or number them.");
        }
        else if (PropFaults.Full(prop, others, brief) is { } full)
        {
            entry.Refuse("with", full, "Maybe \"hand\": \"left\" is meant, or it lies on the floor.");
        }
        else if (prop.With is null && entry.Has("kind"))
        {
            CheckPlace(entry, prop, brief);
        }
    }

    private static void CheckPlace(ObjectReader entry, PropPart prop, Brief brief)
    {
        var field = entry.Has("x") ? "x" : "distance";
        if (entry.Has(field) && PropFaults.Place(prop, brief) is var (message, maybe))
        {
            entry.Refuse(field, message, maybe);
        }
    }

    private static int? Holder(ObjectReader entry, Brief brief, Cast cast)
    {
        if (entry.Name("with") is not { } word)
        {
            return null;
        }

        var found = cast.Find(word);
        if (found < 0 && !string.Equals(word, ActorWords.Hero, StringComparison.OrdinalIgnoreCase) && !string.Equals(word, brief.Hero.Name, StringComparison.OrdinalIgnoreCase))
        {
            entry.Refuse("with", $"Nobody in the brief is called {FieldText.Quote(word)}.", NearestWords.Maybe(word, [ActorWords.Hero, .. cast.Names], NearestWords.OneOf([ActorWords.Hero, .. cast.Names])));
        }

        return found;
    }

    private static (Centimetres X, Centimetres Y)? Place(ObjectReader entry, Brief brief)
    {
        var (x, y) = (entry.Metres("x", Measures.Place), entry.Metres("y", Measures.Place));
        var (bearing, distance) = (entry.Clock("bearing"), entry.Metres("distance", Measures.PropDistance));
        if ((entry.Has("x") || entry.Has("y")) && (entry.Has("bearing") || entry.Has("distance")))
        {
            entry.Refuse("x", "Its place is given twice.", "Maybe leave out x and y, or bearing and distance.");
            return null;
        }

        foreach (var (one, other) in (ReadOnlySpan<(string, string)>)[("x", "y"), ("y", "x"), ("bearing", "distance"), ("distance", "bearing")])
        {
            if (entry.Has(one) && !entry.Has(other))
            {
                entry.Missing(other, other == "bearing" ? "\"bearing\": \"3\"" : $"\"{other}\": 2");
            }
        }

        if (entry.Has("x") || entry.Has("y"))
        {
            return (x ?? default, y ?? default);
        }

        if (!entry.Has("bearing") && !entry.Has("distance"))
        {
            return null;
        }

        var (dx, dy) = (bearing ?? default).Direction;
        var away = distance?.Value ?? 100;
        return (new((int)Math.Round(brief.Floor.MarkX.Value + (away * dx))), new((int)Math.Round(brief.Floor.MarkY.Value + (away * dy))));
    }

    private static PropKind? Kind(ObjectReader entry, string word, PropTable table)
    {
        var kind = table.Find(word);
        if (kind is null)
        {
            var (message, maybe) = PropFaults.Unknown(word, table);
            entry.Refuse("kind", message, maybe);
        }

        return kind;
    }
}
