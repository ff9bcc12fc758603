using Generator.Domain;
using Generator.Library.Reading;
using Generator.Library.Words;
using Newtonsoft.Json.Linq;

namespace Generator.Library.Files;

/// <summary>
/// Reads <c>style</c>, a word for a set of settings: each stands where the brief does not say it itself. The brief that comes of it says the settings and keeps the word, so that papers can name it; reading it again changes nothing.
/// </summary>
internal static class StyleWord
{
    /// <summary>The brief with what its style sets; the brief itself where it has none, or one that nobody knows.</summary>
    public static Brief Of(ObjectReader root, Brief brief, Book book)
    {
        if (root.Text("style") is not { } word)
        {
            return brief;
        }

        var plain = PlainWord.Squeezed(word);
        var style = book.Styles.FirstOrDefault(s => s.Aliases.Prepend(s.Name).Prepend(s.Id).Any(w => string.Equals(PlainWord.Squeezed(w), plain, StringComparison.Ordinal)));
        if (style is null)
        {
            List<string> known = [.. book.Styles.Select(s => s.Id)];
            root.Refuse("style", $"The library has no style called {FieldText.Quote(word)}.", NearestWords.Maybe(word, known, NearestWords.OneOf(known)));
            return brief;
        }

        List<string> wanted = [.. brief.Favour, .. brief.Signature is { } signature ? [signature] : Array.Empty<string>(), .. brief.Moments.SelectMany(m => m.Moves).SelectMany(Named)];
        var dealt = 0;
        return brief with
        {
            Style = style.Id,
            Arc = root.Has("arc") ? brief.Arc : style.Arc ?? brief.Arc,
            AnsweredPercent = brief.AnsweredPercent ?? style.AnsweredPercent,
            Pace = new Pace(
                Said(root, "patienceCounts") ? brief.Pace.Patience : style.Patience ?? brief.Pace.Patience,
                Said(root, "longestPauseCounts") ? brief.Pace.LongestPause : style.LongestPause ?? brief.Pace.LongestPause,
                Said(root, "lingerCounts") ? brief.Pace.Linger : style.Linger ?? brief.Pace.Linger),
            Avoid = root.Has("avoid") ? brief.Avoid : [.. style.Avoid.Where(w => !wanted.Exists(s => WishWords.Meet(w, s, book)))],
            Favour = root.Has("favour") ? brief.Favour : [.. style.Favour.Where(w => !brief.Avoid.Any(s => WishWords.Meet(w, s, book)))],
            Hero = brief.Hero.Manner is null ? brief.Hero with { Manner = style.Hero } : brief.Hero,
            Attackers = style.Attackers.Count == 0 ? brief.Attackers : [.. brief.Attackers.Select(a => a.Manner is null ? a with { Manner = style.Attackers[dealt++ % style.Attackers.Count] } : a)],
        };
    }

    private static bool Said(ObjectReader root, string field) => root.Token("pace") is JObject pace && pace.TryGetValue(field, StringComparison.Ordinal, out var value) && value.Type != JTokenType.Null;

    private static IEnumerable<string> Named(MomentMove move) => new[] { move.Technique, move.Attack }.OfType<string>();
}
