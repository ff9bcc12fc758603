using System.Text.RegularExpressions;
using System.Xml;
using System.Xml.Linq;
using Generator.Domain;
using Generator.Paperwork.Html;
using Generator.Testing;

namespace Generator.Paperwork.Tests.Html;

public class HtmlTests
{
    private const string Hostile = "</script><img src=x onerror=alert(1)>\"'&<!-- ]]>";

    [Fact]
    public void The_page_of_a_night_on_the_ferry() => Golden.Matches("ferry-page", BodyOf(RoutinePaper.Of(View(Fights.Night))));

    [Fact]
    public void The_part_of_the_hero() => Golden.Matches("ferry-part-hero", BodyOf(PartPaper.Of(View(Fights.Night), -1)));

    [Fact]
    public void The_part_of_an_attacker() => Golden.Matches("ferry-part-attacker", BodyOf(PartPaper.Of(View(Fights.Night), 0)));

    [Fact]
    public void A_routine_without_moves_has_a_page_and_parts()
    {
        var view = View(Fights.Night with { Moves = [] });
        Assert.Contains("Night ferry, car deck", RoutinePaper.Of(view), StringComparison.Ordinal);
        Assert.Contains("No move is yours", PartPaper.Of(view, 1), StringComparison.Ordinal);
    }

    /// <summary>First line, cover and part say the same of music that gets faster and stands still once: 90 counts a minute up to count 17, 120 from there, and 2 s at count 11.</summary>
    [Fact]
    public void Cover_and_parts_know_that_the_tempo_changes()
    {
        var music = new Music { Passages = [new(new(0), new(90), new(0)), new(new(32), new(120), new(0))], Holds = [new(new(20), 2, null)] };
        var view = View(Fights.Night with { Brief = Fights.Night.Brief with { Tempo = new(120), Music = music } });
        var seconds = ((16 * 60 / 90m) + ((view.Source.End - 32) * 30 / 120m) + 2).ToString("0.0", System.Globalization.CultureInfo.InvariantCulture);
        var page = RoutinePaper.Of(view);
        Assert.Equal(2, Regex.Count(page, Regex.Escape(seconds + " s at full speed")));
        Assert.Contains("90 to 120 counts a minute; full speed is 0.67 to 0.50 s a count", page, StringComparison.Ordinal);
        Assert.Contains("90 to 120 counts a minute at full speed", PartPaper.Of(view, 0), StringComparison.Ordinal);
    }

    [Fact]
    public void Pages_load_nothing_from_outside()
    {
        var page = RoutinePaper.Of(View(Fights.Night));
        Assert.DoesNotMatch("""(src|href)\s*=\s*["'](?!#)""", page);
        Assert.DoesNotMatch(@"@import|url\((?!#)", page);
        Assert.Contains("default-src 'none'", page, StringComparison.Ordinal);
    }

    [Fact]
    public void Names_and_notes_with_markup_stay_text()
    {
        var brief = Fights.Ferry with
        {
            Title = Hostile,
            Hero = Fights.Ferry.Hero with { Name = Hostile },
            Attackers = [.. Fights.Ferry.Attackers.Select(a => a with { Name = Hostile, Wardrobe = [Hostile] })],
            Cameras = [Fights.Ferry.Cameras[0] with { Name = Hostile }],
            Floor = Fights.Ferry.Floor with { Obstacles = [Fights.Ferry.Floor.Obstacles[0] with { Name = Hostile }] },
        };
        var view = View(Fights.Night with { Brief = brief, LibraryVersion = Hostile, Moves = [.. Fights.Night.Moves.Select(m => m with { Note = Hostile })] });
        foreach (var page in new[] { RoutinePaper.Of(view), PartPaper.Of(view, -1), PartPaper.Of(view, 0) })
        {
            Assert.DoesNotContain("<img", page, StringComparison.Ordinal);
            Assert.Equal(Regex.Count(page, "<script"), Regex.Count(page, "</script>"));
            Assert.All(Elements(page).SelectMany(e => e.Attributes()), a => Assert.False(a.Name.LocalName.StartsWith("on", StringComparison.OrdinalIgnoreCase)));
            Assert.Contains(Hostile, Elements(page).Single(e => e.Name.LocalName == "h1").Parent!.Value, StringComparison.Ordinal);
        }
    }

    /// <summary>The body is well formed, so nothing from outside can have opened or closed an element.</summary>
    private static IReadOnlyList<XElement> Elements(string page)
    {
        using var reader = XmlReader.Create(new StringReader("<x>" + Regex.Replace(Regex.Replace(BodyOf(page), "<input([^>]*?)/?>", "<input$1/>"), " (hidden|checked|value)(?=[ />])", " $1=\"\"") + "</x>"), new XmlReaderSettings { DtdProcessing = DtdProcessing.Prohibit });
        return [.. XElement.Load(reader).DescendantsAndSelf()];
    }

    /// <summary>Without the head and the code at the end, which are compared nowhere letter by letter.</summary>
    private static string BodyOf(string page)
    {
        var start = page.IndexOf("<body>", StringComparison.Ordinal) + 7;
        var end = page.LastIndexOf("<script>", StringComparison.Ordinal) is > 0 and var code ? code : page.IndexOf("</body>", StringComparison.Ordinal);
        return page[start..end];
    }

    private static RoutineView View(Routine routine) => new(PaperSource.Of(Fights.SceneOf(routine), routine));
}
