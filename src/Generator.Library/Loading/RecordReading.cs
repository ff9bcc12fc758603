using Generator.Domain;
using Generator.Library.Reading;
using Generator.Library.Words;
using Newtonsoft.Json.Linq;

namespace Generator.Library.Loading;

/// <summary>Getters that several kinds of record share.</summary>
internal static class RecordReading
{
    /// <summary>The word for "as it was".</summary>
    public const string Same = "same";

    /// <summary>At the usual tempo, 100 counts a minute.</summary>
    private const decimal SecondsInHalfCount = 0.3m;

    private static readonly Quantity Length = new("a length", 0.5m, 10m, "counts");

    private static readonly Quantity Share = new("a share of the limb", 0m, 9m, string.Empty, "Maybe it is in metres or centimetres; write it as a share, such as 1.2 for one limb and a fifth.");

    private static readonly Quantity Step = new("a step", 0m, 200m, "cm", "Maybe it is in metres; write centimetres.");

    private static readonly Quantity Seconds = new("a time", 0.1m, 30m, "s");

    /// <summary>The id of a record before its side is added.</summary>
    public static string BaseId(this ObjectReader source)
    {
        var id = source.RequiredText("id", "\"id\": \"elbow-across\"");
        if (id.Length > 0 && !IsId(id))
        {
            source.Refuse("id", $"{FieldText.Quote(id)} is no id: small letters and figures, with single hyphens between.", $"Maybe write \"{Kebab(id)}\".");
        }
        else if (id.EndsWith("-left", StringComparison.Ordinal) || id.EndsWith("-right", StringComparison.Ordinal))
        {
            source.Refuse("id", "An id does not name a side; the side is added to it.", $"Maybe write \"{id[..id.LastIndexOf('-')]}\" and give the side in \"side\".");
        }

        return id;
    }

    /// <summary>The name of a record with its side at the end.</summary>
    public static string SidedName(this ObjectReader source, Side? side)
    {
        var name = source.RequiredText("name", "\"name\": \"Elbow across\"");
        if (name.EndsWith(" left", StringComparison.OrdinalIgnoreCase) || name.EndsWith(" right", StringComparison.OrdinalIgnoreCase))
        {
            source.Refuse("name", "A name does not end in a side; the side is added to it.", $"Maybe write \"{name[..name.LastIndexOf(' ')]}\" and give the side in \"side\".");
        }

        return side is { } s ? name + " " + EnumWords.Of(s) : name;
    }

    /// <summary>A word of an enumeration, or null for "same" and for none.</summary>
    public static T? WordOrSame<T>(this ObjectReader source, string field)
        where T : struct, Enum => source.Token(field) is JValue { Value: Same } ? null : source.Word<T>(field);

    /// <summary>A list of words that must name at least one.</summary>
    public static IReadOnlyList<T> SomeWords<T>(this ObjectReader source, string field)
        where T : struct, Enum
    {
        if (!source.Has(field))
        {
            source.Missing(field);
        }
        else if (source.Token(field) is JArray { Count: 0 })
        {
            source.Refuse(field, "The list is empty.", $"Maybe one of these is meant: {string.Join(", ", EnumWords.All<T>())}.");
        }

        return source.Words<T>(field);
    }

    /// <summary>A list as it stands, for checks that come after it was read; empty when it is no list, which was told then.</summary>
    public static IReadOnlyList<Entry> EntriesAgain(this ObjectReader source, string field) =>
        source.Token(field) is JArray ? source.Entries(field) : [];

    /// <summary>A length in counts, whole or half ones, that must be there; null after a problem.</summary>
    public static HalfCounts? Counts(this ObjectReader source)
    {
        if (!source.Has("counts"))
        {
            source.Missing("counts", "\"counts\": 1.5");
        }

        if (source.Number("counts", Length) is not { } counts)
        {
            return null;
        }

        if (decimal.Truncate(counts * 2) != counts * 2)
        {
            source.Refuse("counts", "A length goes by whole and half counts.", "Maybe round it up to the next half.");
        }

        return new HalfCounts((int)Math.Ceiling(counts * 2));
    }

    /// <summary>The fewest seconds, which must fit into the length at the usual tempo.</summary>
    public static decimal FewestSeconds(this ObjectReader source, HalfCounts? counts)
    {
        var seconds = source.RequiredNumber("fewestSeconds", Seconds);
        if (counts is { } length && seconds > length.Value * SecondsInHalfCount)
        {
            var usual = length.Value * SecondsInHalfCount;
            source.Refuse(
                "fewestSeconds",
                FormattableString.Invariant($"At 100 counts a minute {length.InWords} {(length.Value == HalfCounts.PerCount ? "lasts" : "last")} {usual:0.##} s, less than the fewest seconds, {seconds:0.##}."),
                FormattableString.Invariant($"Maybe give it {new HalfCounts((int)Math.Ceiling(seconds / SecondsInHalfCount)).InWords}."));
        }

        return seconds;
    }

    /// <summary>The window relative to the hero's facing: "anywhere", or two half hours from which the second lies clockwise.</summary>
    public static Window Window(this ObjectReader source, string field)
    {
        if (source.Token(field) is null or JValue { Value: "anywhere" })
        {
            return Domain.Window.Anywhere;
        }

        if (source.Token(field) is JValue { Type: JTokenType.String })
        {
            source.Refuse(field, $"{FieldText.Of(source.Token(field))} is no window.", "Maybe write \"anywhere\", or two half hours such as [-2, 2].");
            return Domain.Window.Anywhere;
        }

        if (source.Wholes(field, 2, new Quantity("a bearing from the facing", -23m, 23m, "half hours")) is not [var from, var to])
        {
            return Domain.Window.Anywhere;
        }

        if (to < from || to - from >= Bearing.Circle)
        {
            source.Refuse(field, "The window must go clockwise from its first half hour to its second, and not more than once round.", $"Maybe write [{Math.Min(from, to)}, {Math.Max(from, to)}] or \"anywhere\".");
            return Domain.Window.Anywhere;
        }

        return new Window(from, to);
    }

    /// <summary>The distance band, which must be there; of an attack it has no steps.</summary>
    public static Band Band(this ObjectReader source, string field, bool steps)
    {
        if (!source.Has(field))
        {
            source.Missing(field, $"\"{field}\": {{ \"limb\": \"arm\", \"from\": 0.8, \"to\": 1.2 }}");
        }

        if (source.Object(field) is not { } band)
        {
            return new Band(Limb.Arm, 0, 9, default, default, MeetsOnTheWay: false);
        }

        var limb = band.RequiredWord<Limb>("limb");
        var from = End("from");
        var to = End("to");
        if (from >= to)
        {
            band.Refuse("to", "The far end of the band must lie beyond its near end.", "Maybe the two ends are swapped.");
        }

        var result = steps
            ? new Band(limb, from ?? 0, to ?? 0, new(band.Whole("stepIn", Step) ?? 0), new(band.Whole("stepOut", Step) ?? 0), band.Flag("meets"), new(band.Whole("behind", Step) ?? 0))
            : new Band(limb, from ?? 0, to ?? 0, default, default, MeetsOnTheWay: false);
        band.Finish();
        return result;

        decimal? End(string end)
        {
            if (!band.Has(end))
            {
                band.Missing(end);
            }

            return band.Number(end, Share);
        }
    }

    /// <summary>One line of attack, with its side.</summary>
    public static AttackLine Line(this ObjectReader source)
    {
        var word = source.RequiredText("line", "\"line\": \"high-round-left\"");
        var lines = LineWords.Parse(word);
        if (lines.Count == 1 || word.Length == 0)
        {
            return lines.Count == 1 ? lines[0] : default;
        }

        source.Refuse(
            "line",
            lines.Count == 0 ? $"{FieldText.Quote(word)} is no line of attack." : "The line says no side of the hero.",
            lines.Count == 0 ? NearestWords.Maybe(word, LineWords.All, "Maybe write kind and side, such as high-round-left.") : $"Maybe write {word}-left, {word}-centre or {word}-right.");
        return default;
    }

    /// <summary>What it asks of the body.</summary>
    public static IReadOnlyList<string> Demands(this ObjectReader source)
    {
        foreach (var (value, path) in source.Entries("demands").Where(e => e.Value is not JValue { Value: string word } || !Demand.All.Contains(word, StringComparer.Ordinal)))
        {
            source.Refuse(value, path, $"{FieldText.Of(value)} is nothing that a body can be asked.", NearestWords.Maybe(value.ToString(), Demand.All, $"Maybe one of these is meant: {string.Join(", ", Demand.All)}."));
        }

        return source.Texts("demands");
    }

    /// <summary>What somebody wrote, made into an id.</summary>
    private static string Kebab(string text)
    {
        var letters = string.Concat(text.Select(c => char.IsAsciiLetterOrDigit(c) ? char.ToLowerInvariant(c) : ' '));
        var kebab = string.Join('-', letters.Split(' ', StringSplitOptions.RemoveEmptyEntries));
        return kebab.Length > 0 ? kebab : "elbow-across";
    }

    private static bool IsId(string text) =>
        text.All(c => char.IsAsciiLetterLower(c) || char.IsAsciiDigit(c) || c == '-') && text.Split('-').All(part => part.Length > 0);
}
