using Generator.Domain;
using Generator.Library.Files;
using Generator.Library.Reading;
using Generator.Paperwork.Cameras;
using Generator.Paperwork.Html;
using Generator.Paperwork.SafetyPapers;
using Generator.Paperwork.Text;
using Generator.Rules;
using Generator.Rules.Sight;

namespace Generator.Paperwork.Tests.SafetyPapers;

/// <summary>A fight on two marks 3 m apart, worked by hand: Zora is driven from the door to the window, passing the stove, and shoved back; an anvil stands at the window.</summary>
public sealed class TravelHazardTests
{
    private const string TwoMarks = """
        {
          "brief": {
            "title": "From door to window",
            "hero": { "name": "Zora", "skill": "stunt" },
            "floor": { "width": 8, "depth": 7, "obstacles": [
              { "name": "stove", "x": 2.3, "y": 3.5, "width": 0.4, "depth": 0.4 },
              { "name": "anvil", "x": 6.2, "y": 2.8, "width": 0.4, "depth": 0.4 },
              { "name": "crate", "x": 0.2, "y": 6.5, "width": 0.4, "depth": 0.4 } ] },
            "marks": [ { "name": "door", "x": 2, "y": 3 }, { "name": "window", "x": 5, "y": 3 } ],
            "attackers": [ { "name": "Bruno" } ]
          },
          "attackers": [ { "name": "Bruno", "bearing": "12", "distance": 2 } ],
          "moves": [
            { "count": 2, "technique": "walks-across", "to": "window" },
            { "count": 9, "attacker": "Bruno", "from": "3", "attack": "cross-right", "technique": "driven-back-hit", "reaction": "presses-on", "to": "door" },
            { "count": 16, "attacker": "Bruno", "attack": "cross-right", "technique": "parry-down-left", "reaction": "limb-swept-in" },
            { "count": 17, "attacker": "Bruno", "technique": "finishing-hook-right", "reaction": "out-crumples" }
          ]
        }
        """;

    private static readonly PaperSource Source = Read();

    private static readonly IReadOnlyList<Hazard> Found = Hazards.Of(Source);

    [Fact]
    public void Every_travel_move_is_a_hazard_of_its_kind_with_lane_watcher_and_the_records_own_words()
    {
        var (goes, driven) = (Found.Single(h => h.Title == "Goes to another mark"), Found.Single(h => h.Title == "Driven back to another mark"));
        Assert.Equal([0], goes.Moves.Select(s => s.Index));
        Assert.Equal(["Zora"], goes.Who);
        Assert.StartsWith("m1: Walks across, 3.00 m, door to window. ", goes.How, StringComparison.Ordinal);
        Assert.Equal([1], driven.Moves.Select(s => s.Index));
        Assert.Equal(["Zora", "Bruno"], driven.Who);
        Assert.Contains("what is behind", driven.How, StringComparison.Ordinal);
        Assert.Contains("The hero cannot see where they go at m2.", driven.How, StringComparison.Ordinal);
        Assert.Contains("The lane from mark to mark taped and kept free, 0.80 m to either side of it: window to door; nobody and nothing in it while they go.", driven.Controls.Select(c => c.Text));
        Assert.Contains("Somebody named watches what is behind at m2 and calls the stop.", driven.Controls.Select(c => c.Text));
        Assert.Contains(driven.Controls, c => c.Text.StartsWith("Is hit and driven back: the hero moves after the knap", StringComparison.Ordinal));
        Assert.True(driven.Level > driven.LevelAfter);
        Assert.True(driven.Harm > goes.Harm);
    }

    /// <summary>The stove's edge is 0.5 m from the line between the marks, the crate over 3 m.</summary>
    [Fact]
    public void What_stands_at_the_way_is_named_with_how_near_it_is()
    {
        var goes = Found.Single(h => h.Title == "Goes to another mark");
        Assert.Contains("m1 passes stove at 0.50 m.", goes.How, StringComparison.Ordinal);
        Assert.DoesNotContain("anvil", goes.How, StringComparison.Ordinal);
        Assert.Equal(Likelihood.Likely, goes.Likelihood);
    }

    /// <summary>1.2 m from the window to the anvil, 4.2 m from the door: from the first mark alone nobody comes near it.</summary>
    [Fact]
    public void An_obstacle_is_judged_from_the_mark_of_the_moment()
    {
        var anvil = Found.Single(h => h.Title == "Obstacle: anvil");
        Assert.Contains("Zora", anvil.Who);
        Assert.Contains(anvil.Moves, s => s.Index == 0);
        Assert.Contains("or the hero's way comes to it is ", anvil.How, StringComparison.Ordinal);
        Assert.True(anvil.Likelihood >= Likelihood.Possible);
        Assert.DoesNotContain(Found.Single(h => h.Title == "Obstacle: crate").Moves, s => s.Travels >= 0);
    }

    [Fact]
    public void Places_of_falls_say_from_which_mark_they_are_seen()
    {
        var falls = Found.Where(h => h.Controls.Any(c => c.Text.StartsWith("Mats where they land", StringComparison.Ordinal))).ToList();
        Assert.NotEmpty(falls);
        Assert.All(falls, f => Assert.Contains(" of door.", f.Controls.Single(c => c.Text.StartsWith("Mats", StringComparison.Ordinal)).Text, StringComparison.Ordinal));
    }

    [Fact]
    public void The_floor_sketch_shows_every_mark()
    {
        var sketch = FloorSketch.Of(Source.Brief, Source.Routine.Placements).ToList();
        var row = sketch.Single(l => l.Contains("9:00", StringComparison.Ordinal));
        Assert.Equal(300 / 25, row.IndexOf("^2", StringComparison.Ordinal) - row.IndexOf('^', StringComparison.Ordinal));
        var all = string.Join('\n', sketch);
        Assert.Contains("^ Zora on the first mark, door", all, StringComparison.Ordinal);
        Assert.Contains("^2 the mark window", all, StringComparison.Ordinal);
    }

    [Fact]
    public void Plans_and_parts_say_from_which_mark_they_count()
    {
        const string Said = "Hours round the plan are seen from door, the first mark";
        var view = new RoutineView(Source);
        var part = PartPaper.Of(view, 0);
        Assert.Contains(Said, RoutinePaper.Of(view), StringComparison.Ordinal);
        Assert.Contains(Said, part, StringComparison.Ordinal);
        Assert.Contains("2.00 m from door, ", part, StringComparison.Ordinal);
        Assert.Contains(" m from window</dd>", part, StringComparison.Ordinal);
        Assert.DoesNotContain(Said, RoutinePaper.Of(new RoutineView(Ferry.Source)), StringComparison.Ordinal);
    }

    /// <summary>Hits at another mark are drawn there: the walk to the window moves the dots of what happens there by 3 m.</summary>
    [Fact]
    public void The_camera_plan_draws_a_hit_at_the_mark_on_which_it_happens()
    {
        var hits = Hit.Of(Source.Scene, Source.Steps);
        var away = hits.First(h => h.Mark.X > 0);
        var dots = new CameraView(Source, new CameraPlan(hits, [], []), null).Marks.ToList();
        var same = new CameraView(Source, new CameraPlan([.. hits.Select(h => h with { Mark = default })], [], []), null).Marks.ToList();
        var at = hits.ToList().IndexOf(away);
        Assert.True(dots[at].At.X - same[at].At.X > 20);
    }

    private static PaperSource Read()
    {
        var read = RoutineReader.Parse(new SourceFile("marks.routine.json", TwoMarks), Ferry.Book, null);
        var routine = read.Value ?? throw new InvalidOperationException(read.ToText());
        return PaperSource.Of(new Scene(routine.Brief, Ferry.Book), routine);
    }
}
