using Generator.Domain;
using Generator.Library.Files;
using Generator.Library.Reading;

namespace Generator.Library.Loading;

/// <summary>Reads <c>props.json</c>, and what a record says of the prop that it is done with.</summary>
internal static class PropReader
{
    private static readonly Quantity Share = new("a share of its length", -1m, 1.5m, string.Empty, "Maybe it is in metres or centimetres; write it as a share of the length, such as 0.5.");

    private static readonly Quantity Hands = new("a number of hands", 1m, 2m);

    /// <summary>Kinds of props.</summary>
    public static PropTable Read(ObjectReader root)
    {
        var kinds = new List<PropKind>();
        foreach (var source in root.Objects("kinds"))
        {
            var kind = Kind(source);
            if (kinds.Exists(k => k.GoesBy(kind.Id) || kind.Aliases.Any(k.GoesBy)))
            {
                source.Refuse("id", $"Two kinds go by {FieldText.Quote(kind.Id)} or by one of its other words.", "Maybe one of the two can go.");
            }

            kinds.Add(kind);
        }

        root.Finish();
        return new PropTable(kinds);
    }

    /// <summary>The prop that a record is done with; null for none.</summary>
    /// <param name="source">The record.</param>
    /// <param name="holders">Where the prop may be before a record of this sort.</param>
    public static PropNeed? Of(ObjectReader source, params ReadOnlySpan<PropHolder> holders)
    {
        if (source.Object("prop") is not { } prop)
        {
            return null;
        }

        var need = new PropNeed(prop.RequiredWord<PropUse>("use"), prop.RequiredWord<PropHolder>("with"), prop.Word<PropHand>("hand"), prop.Word<PropFate>("then") ?? PropFate.Keeps, prop.Word<PropHand>("into"));
        if (prop.Has("with") && !holders.Contains(need.Holder))
        {
            prop.Refuse("with", $"A record of this sort has no prop with {EnumWords.Of(need.Holder)}.", $"Maybe one of these is meant: {string.Join(", ", holders.ToArray().Select(EnumWords.Of))}.");
        }

        var moves = need.Then is PropFate.Takes or PropFate.Passes;
        if (moves && !prop.Has("into"))
        {
            prop.Missing("into", "\"into\": \"right\"");
        }
        else if (!moves && prop.Has("into"))
        {
            prop.Refuse("into", "Only what is taken or passed on comes into a hand.", "Maybe \"then\": \"takes\" is meant, or \"into\" can go.");
        }

        if (need.Holder == PropHolder.Floor && (need.Then != PropFate.Takes || prop.Has("hand")))
        {
            prop.Refuse("with", "What lies on the floor is in no hand, and is taken up or left alone.", "Maybe \"then\": \"takes\" is missing, or \"hand\" can go.");
        }

        prop.Finish();
        return need;
    }

    private static IReadOnlyList<PropPoint> Outline(ObjectReader source)
    {
        var count = source.Entries("points").Count;
        if (count < 4 || count % 2 != 0)
        {
            source.Refuse("points", "An outline has at least two points of two numbers each.", "Maybe one number is missing: first along, then aside, for every point.");
        }

        var numbers = source.Numbers("points", count, Share) ?? [];
        source.Finish();
        return [.. numbers.Chunk(2).Where(p => p.Length == 2).Select(p => new PropPoint(p[0], p[1]))];
    }

    private static PropKind Kind(ObjectReader source)
    {
        foreach (var field in (ReadOnlySpan<string>)["length", "hands"])
        {
            if (!source.Has(field))
            {
                source.Missing(field, field == "hands" ? "\"hands\": 1" : "\"length\": 0.6");
            }
        }

        var kind = new PropKind(
            source.BaseId(),
            source.RequiredText("name", "\"name\": \"a stick\""),
            source.SomeWords<PropUse>("uses"),
            source.Metres("length", Measures.PropLength) ?? new(50),
            source.Whole("hands", Hands) ?? 1,
            source.RequiredText("safety", "\"safety\": \"How nobody is hurt by it.\""),
            source.RequiredText("source", "\"source\": \"common practice, no source\""))
        {
            Aliases = source.Texts("aliases"),
            Rigid = source.Flag("rigid", fallback: true),
            Breakaway = source.Flag("breakaway"),
            Hangs = source.Flag("hangs"),
            Drawn = [.. source.Objects("drawn").Select(Outline)],
            CheckedBy = source.RequiredText("checkedBy", "\"checkedBy\": \"the props master\""),
            Check = source.RequiredText("check", "\"check\": \"Bend it.\""),
        };
        if (kind.Uses.Contains(PropUse.Break) && !kind.Breakaway)
        {
            source.Refuse("uses", "Only a break-away is broken on somebody.", "Maybe \"breakaway\": true is missing, or \"break\" can go.");
        }

        source.Finish();
        return kind;
    }
}
