using System.Text;
using System.Text.RegularExpressions;
using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using Newtonsoft.Json.Linq;
using Xunit.Abstractions;

namespace Generator.Cli.Tests.Papers;

/// <summary>What a part tells its performer to do can be done: read back from the page, and compared with the playback.</summary>
public partial class PartsTests(ITestOutputHelper output)
{
    [Fact]
    public void A_part_never_says_go_before_ready()
    {
        var (again, gone, held, atOnce) = (0, 0, 0, 0);
        foreach (var pack in Made.Packs)
        {
            var doings = Doings(pack.Files["routine.html"]);
            foreach (var (name, bytes) in pack.Files.Where(f => f.Key.StartsWith("part-", StringComparison.Ordinal)))
            {
                var page = new HtmlParser().ParseDocument(Encoding.UTF8.GetString(bytes));
                var (earliest, performer) = (Enters().Match(Line(page.QuerySelector("#cover")!, "Opens")), Name(page));
                var entrance = earliest.Success ? Moment(earliest.Groups["at"].Value) : int.MinValue;
                var told = new Dictionary<string, (int Go, int Contact)>(StringComparer.Ordinal);
                foreach (var move in page.QuerySelectorAll("li.move"))
                {
                    var (number, where) = (move.GetAttribute("value")!, $"{pack.Source.Brief.Title}, {name}, move {move.GetAttribute("value")}");
                    if (Go().Match(Line(move, "Go")) is { Success: true } go)
                    {
                        var at = Moment(go.Groups["at"].Value);
                        var contact = Moment(Line(move, "Contact").Split(',')[0]);
                        Assert.True(entrance <= at && at <= contact, where);
                        Assert.True(!told.TryGetValue(number, out var said) || said == (at, contact), where);
                        Assert.True(at == contact || doings(performer, at) is "closes in" or "attacks" or "ready" or "waiting", $"{where}: {doings(performer, at)}");
                        gone++;
                        atOnce += at == contact ? 1 : 0;
                    }
                    else if (Line(move, "Go").Length > 0)
                    {
                        Assert.StartsWith("do not: you are ready only at ", Line(move, "Go"), StringComparison.Ordinal);
                        Assert.Contains(pack.Source.Verdict.Grave, f => f.Move == pack.Source.Steps[int.Parse(number, System.Globalization.CultureInfo.InvariantCulture) - 1].Index + 1);
                        held++;
                    }

                    if (Again().Match(Line(move, "Again")) is { Success: true } next)
                    {
                        var (ready, at, contact) = (Moment(next.Groups["ready"].Value), Moment(next.Groups["go"].Value), Moment(next.Groups["contact"].Value));
                        Assert.True(ready <= at && at <= contact, $"{where}: {next.Value}");
                        told[next.Groups["move"].Value] = (at, contact);
                        again++;
                    }
                }
            }
        }

        output.WriteLine($"{again} times ready and go again, {gone} times go ({atOnce} of them with the contact at once), {held} times not, of {Made.Packs.Count} routines");
        Assert.True(again > 40 && gone > 80 && held > 20, $"{again}, {gone}, {held}");
    }

    /// <summary>What the playback says somebody does at a moment.</summary>
    private static Func<string, int, string> Doings(byte[] page)
    {
        var course = JObject.Parse(new HtmlParser().ParseDocument(Encoding.UTF8.GetString(page)).QuerySelector("#course")!.TextContent);
        var words = course["doings"]!.Values<string>().ToList();
        var first = course.Value<int>("from");
        return (name, time) => course["performers"]!.Skip(1).Where(p => p.Value<string>("name") == name).Select(p => words[p["doings"]!.Values<int>().ElementAt(Math.Max(0, time - first))]!).First();
    }

    private static string Name(IDocument page) => TextReading.Flat(page.QuerySelector("h1.part-name")!.ChildNodes[^1].TextContent);

    private static string Line(IElement element, string label) =>
        TextReading.Flat(element.QuerySelectorAll("dt").FirstOrDefault(d => d.TextContent == label)?.NextElementSibling?.TextContent ?? string.Empty);

    /// <summary>"count 12&amp;" in half counts from count 1; "click 3 of the count-in" lies before it.</summary>
    private static int Moment(string text)
    {
        var read = Counted().Match(text);
        Assert.True(read.Success, text);
        var half = ((int.Parse(read.Groups["number"].Value, System.Globalization.CultureInfo.InvariantCulture) - 1) * 2) + (read.Groups["and"].Length > 0 ? 1 : 0);
        return read.Groups["what"].Value == "click" ? half - 8 : half;
    }

    [GeneratedRegex(@"^(?<what>count|click) (?<number>-?\d+)(?<and>&?)", RegexOptions.CultureInvariant | RegexOptions.NonBacktracking)]
    private static partial Regex Counted();

    [GeneratedRegex(@"in play from (?<at>(count|click) -?\d+&?)", RegexOptions.CultureInvariant | RegexOptions.NonBacktracking)]
    private static partial Regex Enters();

    [GeneratedRegex(@"^at (?<at>(count|click) -?\d+&?)", RegexOptions.CultureInvariant | RegexOptions.NonBacktracking)]
    private static partial Regex Go();

    [GeneratedRegex(@"^be ready by (?<ready>(count|click) -?\d+&?)[^;]*; go at (?<go>(count|click) -?\d+&?) .*; for move (?<move>\d+), contact at (?<contact>(count|click) -?\d+&?)", RegexOptions.CultureInvariant | RegexOptions.NonBacktracking)]
    private static partial Regex Again();
}
