namespace Generator.Domain;

/// <summary>
/// A limit written out: a part of the body and what it must not do, <c>right-knee: no load, no pivot, no kneel</c>. What it must not do is an act
/// (<see cref="LoadAct"/>), or one of two wide words: <c>load</c> is whatever puts weight on the part, <c>use</c> is everything.
/// </summary>
/// <param name="Part">The word for the part.</param>
/// <param name="Acts">What it must not do, without "no".</param>
/// <param name="Load">For each act the parts that must not do it.</param>
public sealed record PartLimit(string Part, IReadOnlyList<string> Acts, Load Load)
{
    private const string No = "no ";

    private static readonly LoadAct[] Weight = [LoadAct.Carry, LoadAct.Pivot, LoadAct.Jump, LoadAct.Land, LoadAct.Kneel, LoadAct.Bend];

    private static readonly (string Word, LoadAct[] Acts)[] Known =
    [
        ("load", Weight), ("use", Enum.GetValues<LoadAct>()),
        ("carry", [LoadAct.Carry]), ("pivot", [LoadAct.Pivot]), ("jump", [LoadAct.Jump]), ("land", [LoadAct.Land]),
        ("kneel", [LoadAct.Kneel]), ("bend", [LoadAct.Bend]), ("work", [LoadAct.Work]), ("strain", [LoadAct.Strain]),
    ];

    /// <summary>What a part can be kept from, the wide words first: <c>no load</c>.</summary>
    public static IReadOnlyList<string> All { get; } = [.. Known.Select(k => No + k.Word)];

    /// <summary>The limit as it is written everywhere.</summary>
    public string Text => $"{Part}: {string.Join(", ", Acts.Select(a => No + a))}";

    /// <summary>It reads like one of these, rightly or wrongly: there is a colon.</summary>
    public static bool IsMeant(string text) => text.Contains(':', StringComparison.Ordinal);

    /// <summary>The limit that a text says; null when the part or one of the acts is unknown.</summary>
    public static PartLimit? Find(string text)
    {
        var (part, acts) = Split(text);
        var parts = BodyPartWords.Find(part);
        if (parts == BodyParts.None || acts.Count == 0 || acts.Any(a => ActsOf(a).Length == 0))
        {
            return null;
        }

        var forbidden = acts.SelectMany(ActsOf).ToHashSet();
        return new PartLimit(part, [.. acts.Select(a => a[No.Length..].Trim())], Load.Each(act => forbidden.Contains(act) ? parts : BodyParts.None));
    }

    /// <summary>The first word that is not understood, and those of which it should be one; null where all are.</summary>
    public static (string Word, IReadOnlyList<string> Known)? Unknown(string text)
    {
        var (part, acts) = Split(text);
        if (BodyPartWords.Find(part) == BodyParts.None)
        {
            return (part, BodyPartWords.All);
        }

        return acts.Where(a => ActsOf(a).Length == 0).Select(a => ((string, IReadOnlyList<string>)?)(a, All)).FirstOrDefault();
    }

    private static (string Part, IReadOnlyList<string> Acts) Split(string text)
    {
        var colon = text.IndexOf(':', StringComparison.Ordinal);
        return colon < 0 ? (text, []) : (text[..colon].Trim(), text[(colon + 1)..].Split(',', StringSplitOptions.TrimEntries));
    }

    private static LoadAct[] ActsOf(string said) =>
        said.StartsWith(No, StringComparison.Ordinal) ? Array.Find(Known, k => string.Equals(k.Word, said[No.Length..].Trim(), StringComparison.Ordinal)).Acts ?? [] : [];
}
