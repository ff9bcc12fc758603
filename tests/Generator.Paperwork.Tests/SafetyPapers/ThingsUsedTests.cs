using Generator.Domain;
using Generator.Figures.Bodies;
using Generator.Figures.Posing;
using Generator.Paperwork.Following;
using Generator.Paperwork.Html;
using Generator.Paperwork.SafetyPapers;
using Generator.Paperwork.Text;
using Generator.Rules;
using Generator.Testing;

namespace Generator.Paperwork.Tests.SafetyPapers;

/// <summary>A wall that somebody is driven against is named with the move, its padding and who checks it; a bollard that nobody uses stays an obstacle.</summary>
public sealed class ThingsUsedTests
{
    private static readonly PaperSource Source = Driven();

    [Fact]
    public void The_risk_assessment_says_how_it_is_used()
    {
        var wall = Hazards.Of(Source).Single(h => h.Title == "Obstacle: back wall");
        Assert.Contains("The fight uses it: driven against (", wall.How, StringComparison.Ordinal);
        Assert.Contains(wall.Moves, s => s.Technique?.BaseId == "wall-drive");
        Assert.Contains(wall.Controls, c => c.Text.Contains("Local padding", StringComparison.Ordinal));
        Assert.Contains(wall.Controls, c => c.Text.Contains("fight captain checks it before every call", StringComparison.Ordinal));
        Assert.DoesNotContain("The fight uses it", Hazards.Of(Source).Single(h => h.Title == "Obstacle: bollard").How, StringComparison.Ordinal);
    }

    [Fact]
    public void The_fight_call_asks_who_has_checked_it()
    {
        var sheet = string.Join(' ', FightCallSheet.Of(Source, Hazards.Of(Source)).Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries));
        Assert.Contains("Used: back wall, driven against (", sheet, StringComparison.Ordinal);
        Assert.Contains("Checked by: " + new string('_', 24), sheet, StringComparison.Ordinal);
        Assert.Contains("Obstacle: bollard stands on its marks", sheet, StringComparison.Ordinal);
    }

    [Fact]
    public void The_moves_name_it()
    {
        var lines = MoveLines.Of(Source.Scene, Source.Routine, Source.Steps).Select(l => l.Trim()).ToList();
        Assert.Equal(1, lines.Count(l => l == ". against the back wall"));
        Assert.True(lines.IndexOf(". against the back wall") > lines.FindIndex(l => l.Contains("Drives against", StringComparison.Ordinal)));
    }

    /// <summary>The wall is 250 cm high: it goes on above the picture, behind whoever is driven against it.</summary>
    [Fact]
    public void The_picture_of_the_move_shows_it_behind_whoever_is_driven_against_it()
    {
        var source = Source.With(PaperOptions.Default with { Cards = Ferry.Cards });
        var (block, drive) = (FigurePlate.Of(source, source.Steps[0]), FigurePlate.Of(source, source.Steps[1]));
        Assert.DoesNotContain("class=\"ft\"", block, StringComparison.Ordinal);
        Assert.Equal(2, drive.Split("class=\"ft\"").Length - 1);
        var card = source.Options.Cards!.Of(source.Steps[1].Technique!, met: new Met(null, source.Steps[1].TargetPosture, source.Steps[1].Reaction))!;
        var thing = FigureThing.In(source.Scene, source.Steps[1], card).End.Thing!.Value;
        Assert.InRange(thing.From - card.End.Attacker![Joint.Hips].Z, 0, 0.9);
        Assert.Equal((0.2, (double)source.Scene.Book.Things.HeightOf(source.Brief.Floor.Obstacles[0])!.Value.Metres), (Math.Round(thing.To - thing.From, 6), thing.High));
    }

    private static PaperSource Driven()
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
                    Obstacles = [new("back wall", new(400), new(820), new(400), new(20)) { Kind = "wall" }, new("bollard", new(100), new(100), new(40), new(40))],
                },
                Hero = new HeroPart { Name = "Ines", Skill = Skill.Stunt },
                Attackers = [],
                Length = new Length(null, 2, 0),
            },
            book,
            "Bruno@12/250",
            "8 Bruno swing-right outside-block-left limb-stopped ; 10 Bruno - wall-drive hits-wall");
        return PaperSource.Of(new Scene(routine.Brief, book), routine);
    }
}
