using System.Text;
using Generator.Domain;
using Generator.Library.Files;
using Generator.Library.Reading;
using Newtonsoft.Json.Linq;

namespace Generator.Cli.Tests.Papers;

/// <summary>Whoever stirs before count 1 is named wherever somebody looks for when to go, with the same click.</summary>
public class LeadInPapersTests
{
    [Theory]
    [InlineData("1", "2 counts before count 1, on click 3")]
    [InlineData("1&", "1.5 counts before count 1, on click 3&")]
    [InlineData("2", "1 count before count 1, on click 4")]
    public void Sheet_parts_cues_playback_and_page_say_who_sets_off_when(string count, string said)
    {
        var papers = Of(count);
        Assert.Contains($"Lead-in: Bruno sets off {said} of the 4 that count in.", Flat(papers, "wall.txt"), StringComparison.Ordinal);
        Assert.All(["routine.html", "part-hero.html", "part-bruno.html"], p => Assert.Contains($"<dt>Lead-in</dt><dd>Bruno sets off {said.Replace("&", "&amp;", StringComparison.Ordinal)}</dd>", Text(papers, p), StringComparison.Ordinal));
        Assert.Contains(said, Flat(papers, "cue-list.txt"), StringComparison.Ordinal);
        Assert.Equal(papers.Source.Steps[0].Before.Attackers[0].ReadyAt, (int)Playback(papers)["from"]!);
        Assert.True((int)Playback(papers)["from"]! < 0);
    }

    [Fact]
    public void Where_nobody_stirs_nothing_is_said()
    {
        var papers = Of("6");
        Assert.All(["wall.txt", "routine.html", "part-bruno.html", "cue-list.txt"], p => Assert.DoesNotContain("lead-in", Text(papers, p), StringComparison.OrdinalIgnoreCase));
        Assert.Equal(0, (int)Playback(papers)["from"]!);
    }

    /// <summary>Bruno opens four metres out: two counts to walk in.</summary>
    private static PaperPack Of(string count) =>
        Made.Pack(RoutineReader.Parse(new SourceFile("r.csv", $"count,attacker,attack,technique,reaction,opening bearing,opening distance\n{count},Bruno,swing-right,parry-down-left,head-drops,12,4\n"), Made.Book, null).Value!);

    private static string Text(PaperPack papers, string name) => Encoding.UTF8.GetString(papers.Files[name]);

    private static string Flat(PaperPack papers, string name) => string.Join(' ', Text(papers, name).Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries));

    private static JObject Playback(PaperPack papers)
    {
        const string Opens = "id=\"course\">";
        var page = Text(papers, "routine.html");
        var from = page.IndexOf(Opens, StringComparison.Ordinal) + Opens.Length;
        return JObject.Parse(page[from..page.IndexOf("</script>", from, StringComparison.Ordinal)]);
    }
}
