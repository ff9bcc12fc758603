using AngleSharp.Dom;
using AngleSharp.Html.Parser;

namespace Generator.Cli.Tests.Papers;

/// <summary>Reads the pages with a parser of HTML that had no part in making them.</summary>
internal static class PageReading
{
    /// <summary>What a page says.</summary>
    /// <param name="paper">File name.</param>
    /// <param name="html">The whole page.</param>
    /// <param name="cast">Names, the hero first.</param>
    public static IEnumerable<Fact> Of(string paper, string html, IReadOnlyList<string> cast)
    {
        var page = new HtmlParser().ParseDocument(html);
        var facts = paper.StartsWith("part-", StringComparison.Ordinal) ? Part(page, cast) : paper == "routine.html" ? Routine(page, cast) : [];
        foreach (var script in page.QuerySelectorAll("script, style").ToList())
        {
            script.Remove();
        }

        var flat = TextReading.Flat(string.Join(' ', page.All.Where(e => e.ChildElementCount == 0 || e.LocalName is "p" or "dd" or "li").Select(e => e.TextContent)));
        return facts.ToList().Concat(TextReading.Head(flat)
            .Select(f => f.Topic == "version" && paper == "routine.html" ? f with { Value = Under(page.QuerySelector("#cover"), "Version") } : f)).Select(f => f.Paper.Length > 0 ? f : f with { Paper = paper });
    }

    private static IEnumerable<Fact> Routine(IDocument page, IReadOnlyList<string> cast)
    {
        foreach (var name in cast.Where(n => page.QuerySelectorAll(".cast bdi").Any(b => b.TextContent == n)))
        {
            yield return new Fact(string.Empty, "cast", name, "in it");
        }

        foreach (var phrase in page.QuerySelectorAll("section.phrase"))
        {
            var counts = TextReading.Flat(phrase.QuerySelector(".counts")!.TextContent);
            yield return new Fact(string.Empty, "phrase", phrase.Id!["phrase-".Length..], counts["counts ".Length..]);
        }

        yield return new Fact(string.Empty, "number of phrases", "all", page.QuerySelectorAll("section.phrase").Length.ToString(System.Globalization.CultureInfo.InvariantCulture));
        foreach (var move in page.QuerySelectorAll("li.move"))
        {
            var number = move.Id!["move-".Length..];
            var who = TextReading.Flat(move.QuerySelector("h3 bdi")!.TextContent);
            yield return new Fact(string.Empty, "count of a move", number, Bare(move.QuerySelector(".count")!.TextContent));
            yield return new Fact(string.Empty, "who", number, who.EndsWith(" alone", StringComparison.Ordinal) ? "nobody" : who);
            yield return new Fact(string.Empty, "attack", number, Under(move, "Attack"));
            yield return new Fact(string.Empty, "technique", number, TextReading.Flat(move.QuerySelector("dd.technique")!.TextContent));
            yield return new Fact(string.Empty, "reaction", number, Under(move, "Reaction"));
        }
    }

    private static IEnumerable<Fact> Part(IDocument page, IReadOnlyList<string> cast)
    {
        var name = TextReading.Flat(page.QuerySelector("h1.part-name .num")?.ParentElement is { } ? page.QuerySelector("h1.part-name")!.ChildNodes[^1].TextContent : string.Empty);
        var (hero, any) = (name == cast[0], name == cast[0] ? "the hero's part" : "the parts");
        yield return new Fact("the parts", "falls in a run", name, Under(page.QuerySelector("#cover"), "Falls").Split(' ')[0]);
        foreach (var move in page.QuerySelectorAll("li.move"))
        {
            var number = move.GetAttribute("value")!;
            yield return new Fact(any, "count of a move", number, Bare(move.QuerySelector(".count")!.TextContent));
            if (hero)
            {
                yield return new Fact(any, "technique", number, TextReading.Flat(move.QuerySelector("h3")!.FirstChild!.TextContent));
            }

            var contact = hero ? Under(move, "Attack").Split(", contact at ") is [_, var at] ? at : string.Empty : Under(move, "Contact").Split(',')[0];
            if (contact.Length > 0)
            {
                yield return new Fact(any, "contact", number, Bare(contact));
            }

            if (Under(move, "Fall") is { Length: > 0 } fall)
            {
                yield return new Fact("the parts", "fall", $"{number} {name}", "a fall");
                yield return new Fact("the parts", "down", $"{number} {name}", Bare(fall.Split(';')[0]["down at ".Length..]));
            }
        }
    }

    private static string Under(IElement? element, string label) =>
        TextReading.Flat(element?.QuerySelectorAll("dt").FirstOrDefault(d => d.TextContent == label)?.NextElementSibling?.TextContent ?? string.Empty);

    /// <summary>"count 12&amp;" is 12&amp;, "click 3 of the count-in" is click 3.</summary>
    private static string Bare(string text) => TextReading.Flat(text).Replace("count ", string.Empty, StringComparison.Ordinal).Replace(" of the count-in", string.Empty, StringComparison.Ordinal);
}
