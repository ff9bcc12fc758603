using Generator.Domain;
using Generator.Figures.Bodies;
using Generator.Paperwork.Floor;
using Generator.Paperwork.Following;
using Generator.Rules;
using Generator.Rules.Bodies;
using Generator.Testing;

namespace Generator.Paperwork.Tests.Following;

/// <summary>Whoever is thrown onto a bed is seen on it, in the round and in the motion files, before they come off it; and every plan shows the bed.</summary>
public class ThrownOntoTests
{
    private static readonly PaperSource Source = Thrown();

    [Fact]
    public void They_lie_on_it_and_come_off_it()
    {
        var course = Course.Of(Source);
        var acted = Acted.Of(Source, Ferry.Cards);
        var bed = Source.Brief.Floor.Obstacles[0];
        Assert.Equal([bed], Rules.Rules.Thing.Used(Source.Scene, Source.Steps[1]).Select(u => u.Thing));
        var part = acted.Parts[1];
        var on = part.Keys.Where(k => k.Body[Joint.Hips].Y is > 0.5 and < 0.75 && k.Body[Joint.Crown].Y < k.Body[Joint.Hips].Y + 0.6).ToList();
        Assert.NotEmpty(on);
        var hips = on[^1].Body[Joint.Hips];
        Assert.InRange(-hips.Z * 100, bed.Y.Value - 600, bed.Y.Value - 600 + bed.Depth.Value);
        Assert.InRange(hips.X * 100, bed.X.Value - 600, bed.X.Value - 600 + bed.Width.Value);
        Assert.True(on[^1].Time > Source.Steps[1].Start);
        var end = part.KeyAt(20).Body;
        Assert.InRange(end[Joint.Hips].Level.To(Stage.Of(course.Performers[1].PlaceAt(20)).Level), 0, 0.1);
        Assert.InRange(end[Joint.Hips].Y, 0.3, 0.55);
    }

    [Fact]
    public void The_plan_shows_all_of_it()
    {
        var bed = Source.Brief.Floor.Obstacles[0];
        var window = new FloorPainter(Source, Course.Of(Source)).Window;
        Assert.True(window.Shows(new Place(bed.X.Value - 600, bed.Y.Value - 600)) && window.Shows(new Place(bed.X.Value + bed.Width.Value - 600, bed.Y.Value + bed.Depth.Value - 600)));
    }

    private static PaperSource Thrown()
    {
        var book = Ferry.Scene.Book.Own;
        var routine = WrittenFight.Of(
            new Brief
            {
                Floor = new FloorPlan
                {
                    Width = new(1200),
                    Depth = new(1200),
                    MarkX = new(600),
                    MarkY = new(600),
                    Obstacles = [new("camp bed", new(500), new(780), new(200), new(180)) { Kind = "bed", Rated = true, Padded = true }],
                },
                Hero = new HeroPart { Name = "Ines", Skill = Skill.Stunt },
                Attackers = [],
                Length = new Length(null, 3, 0),
            },
            book,
            "Bruno@12/250",
            "8 Bruno swing-right outside-block-left limb-stopped ; 10 Bruno - onto-padding-right lands-on-padding ; 40 Bruno swing-right outside-block-left limb-stopped");
        return PaperSource.Of(new Scene(routine.Brief, book), routine);
    }
}
