using Generator.Domain;
using Generator.Library.Reading;
using Generator.Library.Words;

namespace Generator.Library.Files;

/// <summary>Reads hero and attackers of a brief.</summary>
internal static class PerformerReader
{
    public static HeroPart Hero(ObjectReader? reader, Book book)
    {
        var blank = new HeroPart { Name = "Hero", Skill = Skill.Stunt };
        if (reader is null)
        {
            return blank;
        }

        var hero = Hero(reader, blank, book);
        reader.Finish();
        return hero;
    }

    /// <summary>Somebody who does what a hero does.</summary>
    public static HeroPart Hero(ObjectReader reader, HeroPart blank, Book book)
    {
        var hero = (HeroPart)Fill(blank with { Name = reader.Name("name") ?? blank.Name, Lead = Lead(reader), Kneels = reader.Word<Side>("kneels") }, reader, book);
        if (hero.Kneels is not null && WhatForbidsKneeling(hero, hero.OpeningStance, book) is { } what)
        {
            reader.Refuse("kneels", $"{FieldText.Quote(what)} forbids opening with the {book.Stances.NameOf(hero.OpeningStance)}.", "Maybe leave it out: the hero then opens on both feet.");
        }

        return hero;
    }

    /// <summary>The first limit or piece of wardrobe that keeps somebody from the knee, or a part of the body from what it bears there.</summary>
    private static string? WhatForbidsKneeling(Performer person, Stance stance, Book book)
    {
        var load = book.Stances.LoadOf(stance);
        return person.Limits.FirstOrDefault(l => string.Equals(l, Limit.On(Demand.Kneel), StringComparison.Ordinal) || load.And(Limit.Forbids(l)).Anywhere != BodyParts.None)
            ?? person.Wardrobe.FirstOrDefault(w => book.Settle.Wardrobe.TryGetValue(w, out var forbids) && forbids.Contains(Demand.Kneel, StringComparer.Ordinal));
    }

    /// <summary>At least one attacker, at most eight, each with a name of their own and an opening place on the floor.</summary>
    public static IReadOnlyList<AttackerPart> Attackers(ObjectReader root, IReadOnlyList<string> taken, FloorPlan floor, HalfCounts latest, Book book)
    {
        if (!root.Has("attackers"))
        {
            root.Missing("attackers", "\"attackers\": [ { \"name\": \"Bruno\" } ]");
            return [];
        }

        var readers = root.Objects("attackers");
        if (root.Entries("attackers").Count is 0 or > Cast.Most)
        {
            root.Refuse("attackers", $"A fight has 1 to {Cast.Most} attackers.", "Maybe split the fight, or leave somebody out.");
        }

        var attackers = new List<AttackerPart>();
        var shares = 0m;
        foreach (var reader in readers)
        {
            var attacker = Attacker(reader, attackers.Count, [.. taken, .. attackers.Select(a => a.Name)], latest, book);
            if (attacker is { Bearing: { } bearing, Distance: { } distance } && !FloorReader.Contains(floor, bearing, distance))
            {
                reader.Refuse(
                    "distance",
                    $"{distance} from the mark at {bearing} lies off the floor.",
                    "Maybe come nearer, from another bearing, or make the floor larger.");
            }

            shares += reader.Number("share", Measures.Share) ?? 0;
            reader.Finish();
            attackers.Add(attacker);
        }

        if (shares > 1.005m)
        {
            root.Refuse("attackers", "The shares of the attackers add up to more than 1.", "Maybe lower one of them; leave one out to let it take the rest.");
        }

        return attackers;
    }

    private static AttackerPart Attacker(ObjectReader reader, int index, IReadOnlyList<string> taken, HalfCounts latest, Book book)
    {
        var name = reader.Name("name");
        if (!reader.Has("name"))
        {
            reader.Missing("name", "\"name\": \"Bruno\"");
        }
        else if (name is not null && taken.Contains(name, StringComparer.OrdinalIgnoreCase))
        {
            reader.Refuse("name", $"Two performers are called {FieldText.Quote(name)}.", "Maybe add a letter or number to one of them.");
        }
        else if (name is not null && Enumerable.Range(0, Cast.Most).Any(i => i != index && string.Equals(Cast.Label(i), name, StringComparison.OrdinalIgnoreCase)))
        {
            reader.Refuse("name", $"{FieldText.Quote(name)} would be taken for another attacker, since this is {Cast.Label(index)}.", $"Maybe call this one {Cast.Label(index)}.");
        }

        var entrance = reader.Count("entrance");
        if (entrance > latest)
        {
            reader.Refuse("entrance", $"Count {entrance} comes after the end of the routine.", "Maybe the length or the entrance is mistyped.");
        }

        var share = reader.Number("share", Measures.Share);
        var person = (AttackerPart)Fill(
            new AttackerPart
            {
                Name = name ?? Cast.Label(index),
                Bearing = reader.Clock("bearing"),
                Distance = reader.Metres("distance", Measures.Opening),
                Speed = reader.Metres("speed", Measures.Speed)?.Value ?? 200,
                SharePercent = share is { } part ? (int)Math.Round(part * 100, MidpointRounding.AwayFromZero) : null,
                Entrance = entrance,
                Kneels = reader.Word<Side>("kneels"),
            },
            reader,
            book);
        return person.Kneels is { } knee ? OnTheKnee(person, knee, reader, book) : person;
    }

    /// <summary>Whoever opens on a knee is there from the start and near enough to attack from it.</summary>
    private static AttackerPart OnTheKnee(AttackerPart part, Side knee, ObjectReader reader, Book book)
    {
        var stance = new HeroPart { Name = part.Name, Kneels = knee }.OpeningStance;
        if (WhatForbidsKneeling(part, stance, book) is { } what)
        {
            reader.Refuse("kneels", $"{FieldText.Quote(what)} forbids opening with the {book.Stances.NameOf(stance)}.", "Maybe leave it out: they then open on both feet.");
        }

        if (part.Distance > AttackerPart.FarthestKneeling)
        {
            reader.Refuse("distance", $"{part.Distance} from the mark is too far for somebody who opens on a knee and attacks from there; {AttackerPart.FarthestKneeling} is the most.", "Maybe let them open nearer, or on both feet.");
        }

        if (part.Entrance > HalfCounts.Zero)
        {
            reader.Refuse("entrance", "Somebody who opens on a knee is on the floor from the start.", "Maybe leave out the entrance, or let them open on both feet.");
        }

        return part with { Distance = part.Distance ?? AttackerPart.NearestOpening, Entrance = HalfCounts.Zero };
    }

    private static Performer Fill(Performer blank, ObjectReader reader, Book book) => blank with
    {
        Height = reader.Metres("height", Measures.Stature) ?? blank.Height,
        Arm = reader.Metres("arm", Measures.Arm),
        Leg = reader.Metres("leg", Measures.Leg),
        Skill = reader.Word<Skill>("skill") ?? blank.Skill,
        Manner = MannerOf(reader, book),
        Limits = LimitReader.Read(reader),
        Wardrobe = reader.KnownTexts("wardrobe", "piece of wardrobe", [.. book.Settle.Wardrobe.Keys.Order(StringComparer.Ordinal)]),
        FallsPerRun = reader.Whole("fallsPerRun", Measures.FallsPerRun),
    };

    /// <summary>A manner of the library, by id, name or alias.</summary>
    private static string? MannerOf(ObjectReader reader, Book book)
    {
        if (reader.Text("manner") is not { } word)
        {
            return null;
        }

        var plain = PlainWord.Squeezed(word);
        var found = book.Manners.FirstOrDefault(m => m.Aliases.Prepend(m.Name).Prepend(m.Id).Any(w => string.Equals(PlainWord.Squeezed(w), plain, StringComparison.Ordinal)));
        if (found is null)
        {
            reader.Refuse("manner", $"The library has no manner called {FieldText.Quote(word)}.", NearestWords.Maybe(word, [.. book.Manners.Select(m => m.Id)], NearestWords.OneOf([.. book.Manners.Select(m => m.Id)])));
        }

        return found?.Id;
    }

    private static Side? Lead(ObjectReader reader) => reader.Text("lead") switch
    {
        null or "left" => Side.Left,
        "right" => Side.Right,
        "none" => null,
        _ => Refused(reader),
    };

    private static Side? Refused(ObjectReader reader)
    {
        reader.Refuse("lead", $"{FieldText.Of(reader.Token("lead"))} is not a lead foot.", "Maybe one of these is meant: left, right, none.");
        return null;
    }
}
