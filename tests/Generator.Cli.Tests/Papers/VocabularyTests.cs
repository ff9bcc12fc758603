using System.Text;
using System.Text.RegularExpressions;
using AngleSharp.Html.Parser;
using Generator.Library.Files;
using Generator.Paperwork;
using Generator.Paperwork.Text;
using Newtonsoft.Json.Linq;
using Xunit.Abstractions;

namespace Generator.Cli.Tests.Papers;

/// <summary>One word for one thing on every paper and in what explains a move; words that are not plain are explained on the paper that uses them.</summary>
public partial class VocabularyTests(ITestOutputHelper output)
{
    /// <summary>Words for which there is a plainer one, with that one.</summary>
    private static readonly (string Word, string Plain)[] Gone =
    [
        (@"\buses the (opening|hold)\b", "while somebody is off balance"),
        (@"\bopen until\b", "until count"),
        (@"\blingers\b", "takes longer to recover"),
        (@"(?<![-.\d])0\.5 counts\b", "half a count"),
        (@"\bbetween moves\b", "no move"),
        (@"\breset window\b", "recovering"),
        (@"\bnot in yet\b", "off the floor"),
        (@"\bin from the start\b", "in play from the start"),
        (@"\b(comes?|coming) in\b", "enters, or closes in"),
        (@"\breads\b", "sells"),
        (@"\bOut (crumples|flat|forward|over|lying|sinks|gives up|flees|clutches|nurses)\b", "crumples and is out"),
        (@"\bfall: \w+, (to|on|forward|thrown)\b", "falls on the back"),
        (@"\bno point more\b|\bmore points?\b|\bpoints? fewer\b", "costs, saves"),
        (@":30 o'clock", "2:30"),
    ];

    [Fact]
    public void All_papers_say_one_thing_with_one_word()
    {
        var (papers, explained) = (0, 0);
        var faults = new SortedSet<string>(StringComparer.Ordinal);
        foreach (var pack in Made.Packs.Append(Made.Ferry))
        {
            foreach (var (name, bytes) in pack.Files.Where(f => Path.GetExtension(f.Key) is ".txt" or ".html" or ".csv" or ".ics" or ".svg"))
            {
                var words = Said(name, Encoding.UTF8.GetString(bytes));
                faults.UnionWith(Faults(words).Select(f => $"{name}: {f}"));
                papers++;
                if (Path.GetExtension(name) is ".txt" or ".html" && Entrance().IsMatch(words.Replace(Words.Entrances, string.Empty, StringComparison.Ordinal)))
                {
                    explained++;
                    if (!words.Contains(Words.Entrances, StringComparison.Ordinal))
                    {
                        var at = Entrance().Match(words).Index;
                        faults.Add($"{name} speaks of who enters and does not say what that means: {words[Math.Max(0, at - 40)..Math.Min(words.Length, at + 40)]}");
                    }
                }
            }
        }

        output.WriteLine($"{papers} papers, {explained} that speak of entrances");
        Assert.True(faults.Count == 0, string.Join('\n', faults.Take(30)));
        Assert.True(papers > 15 * Made.Routines && explained > 3 * Made.Routines, $"{papers}, {explained}");
    }

    [Fact]
    public void So_do_audit_and_explain()
    {
        using var rig = new Rig();
        var said = new StringBuilder();
        foreach (var pack in Made.Packs.Where((_, i) => i % 6 == 0))
        {
            said.Append(rig.Run("audit", rig.File("one.routine.json", RoutineWriter.Text(pack.Source.Routine))).Out);
        }

        // Every other technique is tried in the place of a move: that takes the less, the fewer moves come after it.
        foreach (var routine in Made.Packs.Where((_, i) => i % 12 == 0).Select(p => p.Source.Routine))
        {
            said.Append(rig.Run("explain", rig.File("one.routine.json", RoutineWriter.Text(routine)), (Math.Max(1, routine.Moves.Count - 1)).ToString(System.Globalization.CultureInfo.InvariantCulture)).Out);
        }

        Assert.Empty(Faults(TextReading.Flat(said.ToString())));
        Assert.Contains("costs nothing", said.ToString(), StringComparison.Ordinal);
    }

    private static IEnumerable<string> Faults(string words) =>
        Gone.SelectMany(g => Regex.Matches(words, g.Word, RegexOptions.CultureInvariant | RegexOptions.IgnoreCase, TimeSpan.FromMinutes(10)).Take(1).Select(m => $"\"{words[Math.Max(0, m.Index - 30)..Math.Min(words.Length, m.Index + 40)]}\", rather: {g.Plain}"));

    /// <summary>What is read or heard: text, labels, and what the playback says.</summary>
    private static string Said(string name, string text)
    {
        if (Path.GetExtension(name) != ".html")
        {
            // A page may end within a sentence.
            return TextReading.Flat(Foot().Replace(text.Replace("\r\n ", string.Empty, StringComparison.Ordinal).Replace('\f', '\n'), "\n"));
        }

        var page = new HtmlParser().ParseDocument(text);
        var played = page.QuerySelector("#course") is { } course ? string.Join(", ", JObject.Parse(course.TextContent)["doings"]!.Values<string>()) : string.Empty;
        var labels = string.Join(' ', page.QuerySelectorAll("[aria-label]").Select(e => e.GetAttribute("aria-label")));
        foreach (var script in page.QuerySelectorAll("script, style").ToList())
        {
            script.Remove();
        }

        return TextReading.Flat(page.Body!.TextContent) + " " + labels + " " + played;
    }

    [GeneratedRegex(@"\n\s*\n(?:[^\n]+\n){0,4}[^\n]*\bpage [0-9]+ of [0-9]+\s*\n", RegexOptions.CultureInvariant)]
    private static partial Regex Foot();

    [GeneratedRegex(@"\b(enters|in play|closes in)\b", RegexOptions.CultureInvariant | RegexOptions.NonBacktracking)]
    private static partial Regex Entrance();
}
