using Generator.Domain;
using Generator.Library.Files;
using Generator.Library.Reading;

namespace Generator.Library.Loading;

/// <summary>Reads <c>things.json</c>, and what a record says of the thing that it uses.</summary>
internal static class ThingReader
{
    private static readonly Quantity Within = new("a distance", 30m, 200m, "cm", "Maybe it is in metres; write centimetres from the middle of the body.");

    /// <summary>Kinds of things and the terms on which they are used.</summary>
    public static ThingTable Read(ObjectReader root)
    {
        var terms = new List<ThingTerms>();
        foreach (var source in root.Objects("uses"))
        {
            var use = source.RequiredWord<ThingUse>("use");
            if (terms.Exists(t => t.Use == use))
            {
                source.Refuse("use", "This use is given twice.", "Maybe one of the two can go.");
            }

            var (least, most) = (source.Metres("from", Measures.ThingHeight) ?? new(5), source.Metres("to", Measures.ThingHeight) ?? new(500));
            if (least > most)
            {
                source.Refuse("to", "The greatest height is less than the lowest.", "Maybe the two are swapped.");
            }

            terms.Add(new ThingTerms(use, source.Flag("rated"), source.Flag("padded"), least, most, source.RequiredText("check", "\"check\": \"Shake it.\"")));
            source.Finish();
        }

        var kinds = new List<ThingKind>();
        foreach (var source in root.Objects("kinds"))
        {
            var kind = Kind(source);
            if (kinds.Exists(k => k.GoesBy(kind.Id) || kind.Aliases.Any(k.GoesBy)))
            {
                source.Refuse("id", $"Two kinds go by {FieldText.Quote(kind.Id)} or by one of its other words.", "Maybe one of the two can go.");
            }

            if (kind.Uses.Where(u => !terms.Exists(t => t.Use == u)).Select(EnumWords.Of).ToList() is { Count: > 0 } missing)
            {
                source.Refuse("uses", $"Nothing says on what terms these are: {string.Join(", ", missing)}.", "Maybe add them to the \"uses\" of the file.");
            }

            kinds.Add(kind);
        }

        root.Finish();
        return new ThingTable(kinds, terms);
    }

    /// <summary>What a record uses; null for nothing.</summary>
    /// <param name="source">The record.</param>
    /// <param name="places">Where the thing may be for this sort of record.</param>
    public static ThingNeed? Of(ObjectReader source, params ReadOnlySpan<ThingPlace> places)
    {
        if (source.Object("uses") is not { } uses)
        {
            return null;
        }

        var need = new ThingNeed(uses.RequiredWord<ThingUse>("use"), uses.RequiredWord<ThingPlace>("where"), new(uses.Whole("within", Within) ?? 80));
        if (uses.Has("where") && !places.Contains(need.Where))
        {
            uses.Refuse("where", $"A record of this sort has its thing nowhere {EnumWords.Of(need.Where)}.", $"Maybe one of these is meant: {string.Join(", ", places.ToArray().Select(EnumWords.Of))}.");
        }

        uses.Finish();
        return need;
    }

    /// <summary>What contradicts itself in a technique that uses a thing.</summary>
    /// <param name="technique">The technique.</param>
    /// <param name="source">Where it was read from.</param>
    /// <param name="reactions">All of the library.</param>
    public static void Check(Technique technique, ObjectReader source, IEnumerable<Reaction> reactions)
    {
        if ((technique.TakesTwo || technique.Travel is not null) && reactions.FirstOrDefault(r => r.Uses is not null && technique.Reactions.Contains(r.Id)) is { } taken)
        {
            source.Refuse("reactions", $"{FieldText.Quote(taken.Id)} is sold at a thing, and this {(technique.TakesTwo ? "takes two" : "goes to another mark")}.", "Maybe list another reaction.");
        }

        if (technique.Uses is not { } need)
        {
            return;
        }

        if ((need.Where == ThingPlace.OnTheWay) != (technique.Travel is not null))
        {
            source.Refuse("uses", need.Where == ThingPlace.OnTheWay ? "Only a travel move has a thing on the way." : "A travel move has its thing on the way.", "Maybe \"travel\" is missing, or \"where\" should be another word.");
        }

        if (technique.HasNoTarget && need.Where is not (ThingPlace.BesideHero or ThingPlace.OnTheWay))
        {
            source.Refuse("uses", "It has no target, so that nobody knows where before or behind is.", "Maybe \"where\": \"beside-hero\" is meant.");
        }

        if (technique.TakesTwo)
        {
            source.Refuse("uses", "It takes two, and one thing serves one.", "Maybe leave out \"two\".");
        }
    }

    private static ThingKind Kind(ObjectReader source)
    {
        var kind = new ThingKind(
            source.BaseId(),
            source.RequiredText("name", "\"name\": \"a table\""),
            source.SomeWords<ThingUse>("uses"),
            source.Metres("height", Measures.ThingHeight) ?? new(100),
            source.RequiredText("safety", "\"safety\": \"How nobody is hurt by it.\""),
            source.RequiredText("source", "\"source\": \"common practice, no source\""))
        {
            Aliases = source.Texts("aliases"),
        };
        kind = kind with { Long = source.Metres("long", Measures.Thing) ?? kind.Long, Deep = source.Metres("deep", Measures.Thing) ?? kind.Deep };
        if (!source.Has("height"))
        {
            source.Missing("height", "\"height\": 0.75");
        }

        source.Finish();
        return kind;
    }
}
