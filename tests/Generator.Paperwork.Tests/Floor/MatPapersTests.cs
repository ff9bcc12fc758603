using Generator.Domain;
using Generator.Paperwork.Floor;
using Generator.Paperwork.Following;
using Generator.Paperwork.Html;
using Generator.Paperwork.SafetyPapers;

namespace Generator.Paperwork.Tests.Floor;

/// <summary>Mats of a hard floor are drawn to scale, named, and asked for on the safety papers.</summary>
public sealed class MatPapersTests
{
    private static PaperSource On(Surface surface)
    {
        var routine = Fights.Night with
        {
            Brief = Fights.Ferry with { Floor = Fights.Ferry.Floor with { Surface = surface, Mats = [new Mat("blue mat", new(300), new(350), new(250), new(200)), new Mat("corner mat", new(600), new(0), new(200), new(100))] } },
        };
        return PaperSource.Of(Fights.SceneOf(routine), routine);
    }

    [Fact]
    public void The_plan_shows_them_to_scale_and_by_name()
    {
        var source = On(Surface.Hard);
        var painter = FloorPainter.OfAll(source, Course.Of(source));
        var plan = painter.Opening();
        Assert.Equal([(250.0, 200.0), (200.0, 100.0)], plan.Mats.Select(m => (Math.Round(m.Box.Width / painter.Window.Scale, 6), Math.Round(m.Box.Height / painter.Window.Scale, 6))));
        Assert.Equal(["blue mat", "corner mat"], plan.Labels.Where(l => l.Kind == "mat").Select(l => l.Text));
        Assert.Equal(2, FloorPlate.Of(source, -1, whole: true).Svg.Split("class=\"mat\"").Length - 1);
        Assert.All(plan.Labels.Where(l => l.Kind == "mat"), l => Assert.DoesNotContain(plan.Markers, m => Shapes.Around(m).Overlaps(l.Box)));
    }

    [Fact]
    public void The_fight_call_names_them_and_the_risks_are_those_of_a_hard_floor_with_mats()
    {
        var (hard, matted) = (On(Surface.Hard), On(Surface.Matted));
        Assert.Contains("blue mat, corner mat", Text(hard), StringComparison.Ordinal);
        Assert.DoesNotContain("blue mat, corner mat. Every fall", Text(matted), StringComparison.Ordinal);
        Assert.Contains(Hazards.Of(hard), h => h.How.Contains("a mat that slides on the hard floor", StringComparison.Ordinal));
        Assert.DoesNotContain(Hazards.Of(matted), h => h.How.Contains("a mat that slides", StringComparison.Ordinal));

        static string Text(PaperSource source) => string.Join(' ', FightCallSheet.Of(source, Hazards.Of(source)).Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries));
    }
}
