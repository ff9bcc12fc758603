using Generator.Domain;
using Generator.Paperwork.SafetyPapers;
using Generator.Testing;

namespace Generator.Paperwork.Tests.SafetyPapers;

public class HazardTests
{
    private static readonly IReadOnlyList<Hazard> Found = Hazards.Of(Ferry.Source);

    [Fact]
    public void The_risk_assessment_of_the_ferry() => Golden.Matches("risk-assessment", RiskSheet.Of(Ferry.Source, Found));

    [Fact]
    public void The_fight_call_of_the_ferry() => Golden.Matches("fight-call", FightCallSheet.Of(Ferry.Source, Found));

    [Fact]
    public void Every_fall_stands_under_its_kind_with_who_and_when()
    {
        string[] titles = ["Falls to the knees", "Falls on the back", "Falls on the side", "Falls forward", "Thrown over"];
        var falls = Found.Where(h => titles.Contains(h.Title)).ToList();
        var expected = Ferry.Steps.Where(s => s.Reaction is { Fall: not FallClass.None }).ToList();
        Assert.Equal(expected.Select(s => s.Start).Order(), falls.SelectMany(h => h.Moves).Select(s => s.Start).Order());
        Assert.Equal(expected.Select(s => s.Reaction!.Fall).Distinct().Count(), falls.Count);
        var thrown = falls.Single(h => h.Title == "Thrown over");
        Assert.Equal(["Bruno"], thrown.Who);
        Assert.Equal(Harm.Grave, thrown.Harm);
    }

    [Fact]
    public void Attacks_out_of_sight_are_those_that_the_audit_watches()
    {
        var blind = Found.Single(h => h.Title == "Attacks from outside the hero's sight");
        Assert.Equal(Ferry.Steps.Where(s => s.Attack is not null && Math.Abs(s.SeenFrom) > Ferry.Scene.Settle.SightHalfAngle).Select(s => s.Start), blind.Moves.Select(s => s.Start));
        var uncued = Ferry.Routine with { Moves = [.. Ferry.Routine.Moves.Select(m => m with { Cue = Cue.None })] };
        var worse = Hazards.Of(PaperSource.Of(Ferry.Scene, uncued)).Single(h => h.Title == blind.Title);
        Assert.Equal(Likelihood.Likely, worse.Likelihood);
        Assert.Contains("no spoken or sounded cue at move", worse.How, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(1, 6, Likelihood.Unlikely)]
    [InlineData(1, 7, Likelihood.Possible)]
    [InlineData(4, 6, Likelihood.Possible)]
    [InlineData(5, 5, Likelihood.Likely)]
    public void How_often_in_a_day_of_runs_says_how_likely(int timesARun, int runs, Likelihood likelihood)
    {
        var finder = new Finder(Ferry.With(b => b with { Safety = b.Safety with { Runs = runs } }));
        Assert.Equal(likelihood, finder.Often(timesARun, []));
    }

    [Fact]
    public void Head_height_blows_are_counted_over_the_planned_runs()
    {
        var twice = Hazards.Of(Ferry.With(b => b with { Safety = b.Safety with { Runs = 2 } })).Single(h => h.Title == "Blows at head height");
        var six = Found.Single(h => h.Title == "Blows at head height");
        Assert.Contains("5 head-height hits sold in a run, 30 in 6 runs", six.How, StringComparison.Ordinal);
        Assert.Contains("10 in 2 runs", twice.How, StringComparison.Ordinal);
        Assert.True(twice.Likelihood < six.Likelihood);
    }

    [Fact]
    public void A_novice_and_a_bad_floor_make_harm_more_likely()
    {
        var hard = Hazards.Of(Ferry.With(b => b with { Floor = b.Floor with { Surface = Surface.Wet } }));
        var novices = Hazards.Of(Ferry.With(b => b with { Attackers = [.. b.Attackers.Select(a => a with { Skill = Skill.Novice })] }));
        foreach (var title in new[] { "Thrown over", "Falls on the back" })
        {
            var now = Found.Single(h => h.Title == title).Likelihood;
            Assert.Equal(now + 1, hard.Single(h => h.Title == title).Likelihood);
            Assert.Equal(now + 1, novices.Single(h => h.Title == title).Likelihood);
        }

        Assert.Equal(Likelihood.Likely, hard.Single(h => h.Title == "The floor, wet").Likelihood);
    }

    [Fact]
    public void An_obstacle_names_those_whose_places_are_near()
    {
        var mark = Ferry.Routine.Brief.Floor;
        var near = Hazards.Of(Ferry.With(b => b with { Floor = b.Floor with { Obstacles = [new Obstacle("capstan", new Centimetres(mark.MarkX.Value + 30), new Centimetres(mark.MarkY.Value - 10), new Centimetres(20), new Centimetres(20))] } }));
        var capstan = near.Single(h => h.Title == "Obstacle: capstan");
        Assert.Contains("Ines", capstan.Who);
        Assert.Equal(Likelihood.Likely, capstan.Likelihood);
        Assert.Contains("0.", capstan.How, StringComparison.Ordinal);
        Assert.Empty(Found.Single(h => h.Title == "Obstacle: bollard").Moves);
    }

    [Fact]
    public void Limits_and_clothes_of_the_brief_are_named() =>
        Assert.Contains("Wanda (no fall on the back)", Found.Single(h => h.Title.StartsWith("Earlier", StringComparison.Ordinal)).How, StringComparison.Ordinal);

    [Fact]
    public void Controls_stand_in_order_and_every_hazard_can_be_designed_out()
    {
        Assert.All(Found, h => Assert.Equal(h.Controls.Select(c => c.Order).Order(), h.Controls.Select(c => c.Order)));
        Assert.All(Found, h => Assert.Equal(ControlOrder.DesignOut, h.Controls[0].Order));
        Assert.All(Found, h => Assert.False(h.OnlyInforms));
        Assert.All(Found, h => Assert.True(h.LevelAfter <= h.Level));
        Assert.Equal(Found.Select(h => h.Level).OrderDescending(), Found.Select(h => h.Level));
    }

    [Fact]
    public void Telling_people_alone_lowers_nothing_and_is_remarked_on()
    {
        var told = Found[0] with { Controls = [new Control(ControlOrder.Inform, "Brief the cast.")] };
        Assert.True(told.OnlyInforms);
        Assert.Equal(told.Level, told.LevelAfter);
        Assert.Contains("Telling people is the only control here: look for a guard.", RiskSheet.Of(Ferry.Source, [told]), StringComparison.Ordinal);
    }

    [Fact]
    public void No_control_makes_grave_harm_remote() =>
        Assert.All(Found.Where(h => h.Harm == Harm.Grave), h => Assert.Equal(RiskLevel.Yellow, h.LevelAfter));

    [Fact]
    public void The_five_steps_stand_in_order_and_nothing_is_cleared()
    {
        var text = RiskSheet.Of(Ferry.Source, Found);
        var steps = Enumerable.Range(1, 5).Select(n => text.IndexOf($"STEP {n}", StringComparison.Ordinal)).ToList();
        Assert.All(steps, s => Assert.True(s > 0));
        Assert.Equal(steps.Order(), steps);
        foreach (var paper in new[] { text, FightCallSheet.Of(Ferry.Source, Found), RiskPage.Of(Ferry.Source, Found) })
        {
            Assert.Contains("clears nothing", paper, StringComparison.Ordinal);
            Assert.Contains("qualified fight coordinator", paper.ReplaceLineEndings(" "), StringComparison.Ordinal);
            Assert.Contains("Guidance: Generic", paper, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void What_the_audit_forbids_stands_at_the_top()
    {
        var uncued = Ferry.Routine with { Moves = [.. Ferry.Routine.Moves.Select(m => m with { Cue = Cue.None })] };
        var source = PaperSource.Of(Ferry.Scene, uncued);
        Assert.Contains($"UNSAFE OR BROKEN AS IT STANDS\n  - move {source.Verdict.Grave[0].Move}, count ", RiskSheet.Of(source, Hazards.Of(source)), StringComparison.Ordinal);
        Assert.Contains(source.Head.Warning!, RiskPage.Of(source, Hazards.Of(source)), StringComparison.Ordinal);
    }

    [Fact]
    public void The_country_is_the_one_that_was_chosen()
    {
        foreach (var guidance in Guidance.All)
        {
            var source = Ferry.Source.With(new PaperOptions { Guidance = guidance });
            Assert.Contains($"Guidance: {guidance.Country}.", RiskSheet.Of(source, Found), StringComparison.Ordinal);
            Assert.Contains($"Guidance: {guidance.Country}.", FightCallSheet.Of(source, Found), StringComparison.Ordinal);
        }

        Assert.Equal(4, Guidance.All.Select(g => g.Word).Distinct().Count());
    }

    [Fact]
    public void Names_and_titles_cannot_write_html()
    {
        var source = Ferry.With(b => b with { Title = "<script>x</script>", Hero = b.Hero with { Name = "I\"<b>" } });
        var page = RiskPage.Of(source, Hazards.Of(source));
        Assert.DoesNotContain("<script", page, StringComparison.Ordinal);
        Assert.DoesNotContain("<b>", page, StringComparison.Ordinal);
    }

    [Fact]
    public void A_routine_without_moves_still_has_its_papers()
    {
        var source = PaperSource.Of(Ferry.Scene, Ferry.Routine with { Moves = [] });
        Assert.Equal(4, Hazards.Of(source).Count);
        Assert.NotEmpty(FightCallSheet.Of(source, Hazards.Of(source)));
        foreach (var paper in Pack.Of(source))
        {
            using var stream = new MemoryStream();
            paper.Write(source, stream);
            Assert.NotEqual(0, stream.Length);
        }
    }
}
