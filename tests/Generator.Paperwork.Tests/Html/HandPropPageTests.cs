using System.Text.RegularExpressions;
using Generator.Figures.Painting;
using Generator.Paperwork.Floor;
using Generator.Paperwork.Following;
using Generator.Paperwork.Html;
using Generator.Paperwork.Tests.SafetyPapers;
using Generator.Paperwork.Text;
using Generator.Rules;
using Newtonsoft.Json.Linq;

namespace Generator.Paperwork.Tests.Html;

/// <summary>A club that is shaken out of a hand and a bottle that breaks, as they are seen: in the hand, on the floor, in the words of the cast.</summary>
public sealed partial class HandPropPageTests
{
    private static readonly PaperSource Source = PropsSheetTests.Armed().With(PaperOptions.Default with { Cards = Ferry.Cards });

    [Fact]
    public void The_figures_show_the_club_as_long_as_it_is_held()
    {
        Assert.Contains(PropPicture.Lines, FigurePlate.Of(Source, Source.Steps[0]), StringComparison.Ordinal);
        var figures = new FigureSet(Source);
        var (contact, end) = (figures.Contact(Source.Steps[1])!, figures.End(Source.Steps[1])!);
        var bodies = figures.Drawn.ToDictionary(d => d.Id, d => d.Body, StringComparer.Ordinal);
        Assert.Contains(PropPicture.Lines, bodies[contact.Id], StringComparison.Ordinal);
        Assert.DoesNotContain(PropPicture.Lines, bodies[end.Id], StringComparison.Ordinal);
    }

    [Fact]
    public void Cast_and_parts_say_once_what_somebody_carries_on()
    {
        Assert.Contains("carries on the club in the right hand", Flat(string.Join(' ', CastLines.Of(Source.Scene, Source.Routine.Placements))), StringComparison.Ordinal);
        var view = new RoutineView(Source);
        Assert.Single(Regex.Matches(RoutinePaper.Of(view), "Carries on the club in the right hand"));
        Assert.Single(Regex.Matches(PartPaper.Of(view, 1), "<dt>Carries on</dt><dd>the bottle in the right hand</dd>"));
        Assert.DoesNotContain("Carries on", PartPaper.Of(view, -1), StringComparison.Ordinal);
    }

    /// <summary>The plan of the first phrase says from when the club lies, a later one only that it does; both where Replay has it.</summary>
    [Fact]
    public void Plans_show_what_lies_where_it_lies()
    {
        var painter = new FloorPainter(Source, Course.Of(Source));
        var (drop, later) = (painter.Of([Source.Steps[1]]), painter.Of([Source.Steps[2]]));
        Assert.Empty(painter.Of([Source.Steps[0]]).Props);
        var place = Source.Steps[1].After.Props[0].Place;
        Assert.True(Source.Steps[1].After.Props[0].Lies);
        Assert.Equal(painter.Window.Of(place), Assert.Single(drop.Props).At);
        Assert.Equal($"club, from {Words.AtCount(Source.Steps[1].End)}", drop.Props[0].Name);
        Assert.Equal(painter.Window.Of(place), Assert.Single(later.Props).At);
        Assert.Contains(later.Labels, l => l is { Text: "club", Kind: "prop" });
        Assert.Empty(painter.Whole().Props);
        Assert.Empty(painter.Stage().Props);
    }

    /// <summary>What lies ready before the fight is on the whole floor and on the wall sheet's, with its name.</summary>
    [Fact]
    public void What_lies_ready_is_on_the_whole_floor()
    {
        var brief = Source.Brief with { Props = [.. Source.Brief.Props, new("mop", "broom") { X = new(750), Y = new(600) }] };
        var source = PaperSource.Of(new Scene(brief, Source.Scene.Book), Source.Routine with { Brief = brief });
        var painter = new FloorPainter(source, Course.Of(source));
        var whole = painter.Whole();
        Assert.Equal("mop", Assert.Single(whole.Props).Name);
        Assert.Equal(150 * whole.Window.Scale, whole.Props[0].At.X - whole.Window.Mark.X, 6);
        Assert.Contains("On the floor before count 1: mop, at 3 o&#x27;clock, 1.50 m from the mark.", RoutinePaper.Of(new RoutineView(source)), StringComparison.Ordinal);
        var sketch = string.Join('\n', FloorSketch.Of(brief, source.Routine.Placements));
        Assert.Contains("* mop, on the floor", sketch, StringComparison.Ordinal);
        Assert.Equal(2, sketch.Split('*').Length - 1);
    }

    [Fact]
    public void The_playback_knows_where_every_prop_is()
    {
        var view = new RoutineView(Source);
        var page = RoutinePaper.Of(view);
        var spells = (JArray)JObject.Parse(CourseData().Match(page).Groups[1].Value)["props"]!;
        Assert.Equal(2, spells.Count);
        var down = view.Painter.Window.Of(Source.Steps[1].After.Props[0].Place);
        Assert.Equal(["in Bruno's right hand"], spells[0].Take(1).Select(s => (string)s[1]!));
        Assert.Equal((Source.Steps[1].End, Math.Round(down.X, 1), Math.Round(down.Y, 1)), ((int)spells[0][1]![0]!, (double)spells[0][1]![2]!, (double)spells[0][1]![3]!));
        Assert.Equal("broken", (string)spells[1].Last![1]!);
        Assert.Equal(2, Regex.Count(page, "class=\"lies-there held\" data-prop=\"[01]\""));
    }

    [Fact]
    public void A_name_with_markup_stays_text()
    {
        var page = RoutinePaper.Of(new RoutineView(PropsSheetTests.Armed("</script><img src=x>")));
        Assert.DoesNotContain("<img", page, StringComparison.Ordinal);
        Assert.Contains("&lt;img", page, StringComparison.Ordinal);
    }

    private static string Flat(string text) => string.Join(' ', text.Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries));

    [GeneratedRegex("id=\"course\">(.*?)</script>", RegexOptions.Singleline)]
    private static partial Regex CourseData();
}
