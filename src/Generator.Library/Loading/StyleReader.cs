using Generator.Domain;
using Generator.Library.Files;
using Generator.Library.Reading;
using Generator.Library.Words;

namespace Generator.Library.Loading;

/// <summary>Reads one style, and finds words in it that nobody knows.</summary>
internal static class StyleReader
{
    public static Style Read(ObjectReader source)
    {
        var pace = source.Object("pace");
        var style = new Style
        {
            Id = source.BaseId(),
            Name = source.RequiredText("name", "\"name\": \"Comic\""),
            Aliases = source.Texts("aliases"),
            Arc = source.Word<Arc>("arc"),
            AnsweredPercent = source.Number("answered", Measures.Answered) is { } part ? (int)Math.Round(part * 100, MidpointRounding.AwayFromZero) : null,
            Patience = pace?.Span("patienceCounts", Measures.Span),
            LongestPause = pace?.Span("longestPauseCounts", Measures.Span),
            Linger = pace?.Span("lingerCounts", Measures.Span),
            Avoid = source.Texts("avoid"),
            Favour = source.Texts("favour"),
            Hero = source.Text("hero"),
            Attackers = source.Texts("attackers"),
            Note = source.RequiredText("note", "\"note\": \"What it looks like.\""),
        };
        pace?.Finish();
        source.Finish();
        return style;
    }

    /// <summary>What is avoided or favoured is in the library, nothing is both, and every manner is known.</summary>
    public static void Check(Records records)
    {
        List<string> manners = [.. records.Manners.Select(m => m.Record.Id)];
        List<string> words =
        [
            .. EnumWords.All<Family>(), .. EnumWords.All<AttackKind>(),
            .. records.Techniques.Select(t => t.Record.BaseId), .. records.Attacks.Select(k => k.Record.BaseId),
        ];
        foreach (var (style, source) in records.Styles)
        {
            Known(source, "avoid", style.Avoid, words, "technique, attack, family or kind of attack");
            Known(source, "favour", style.Favour, words, "technique, attack, family or kind of attack");
            Known(source, "attackers", style.Attackers, manners, "manner");
            Known(source, "hero", style.Hero is { } hero ? [hero] : [], manners, "manner");
            foreach (var both in style.Avoid.Intersect(style.Favour, StringComparer.Ordinal))
            {
                source.Refuse("favour", $"{FieldText.Quote(both)} is both avoided and favoured.", "Maybe leave it out of one of the two.");
            }
        }
    }

    private static void Known(ObjectReader source, string field, IReadOnlyList<string> said, List<string> known, string what)
    {
        foreach (var word in said.Except(known, StringComparer.Ordinal))
        {
            source.Refuse(field, $"The library has no {what} {FieldText.Quote(word)}.", NearestWords.Maybe(word, known, "Maybe generator library list shows it; write its id without the side."));
        }
    }
}
