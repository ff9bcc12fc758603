using Generator.Domain;
using Generator.Figures.Bodies;
using Generator.Figures.Posing;
using Generator.Paperwork.Following;
using Generator.Paperwork.Html;
using Generator.Rules;
using Generator.Testing;

namespace Generator.Paperwork.Tests.Html;

/// <summary>Whoever goes over a thing is seen on it, at its height, and past it afterwards.</summary>
public sealed class VaultPictureTests
{
    [Theory]
    [InlineData("vaults-over-right", false)]
    [InlineData("slides-over-left", false)]
    [InlineData("back-roll-over-right", true)]
    public void The_thing_is_under_whoever_goes_over_it(string id, bool back)
    {
        var source = Going(id, back);
        var step = source.Steps[0];
        var card = Ferry.Cards.Of(step.Technique!)!;
        var seen = FigureThing.In(source.Scene, step, card);
        var (under, past) = (seen.Contact.Thing!.Value, seen.End.Thing!.Value);
        Assert.Equal((double)source.Scene.Book.Things.HeightOf(source.Brief.Floor.Obstacles[0])!.Value.Metres, under.High, 6);
        var hero = seen.Contact.Hero!;
        Assert.Equal(under.High, hero.Lowest, 6);
        Assert.Contains(Enum.GetValues<Joint>(), j => hero[j].Y < under.High + 0.15 && hero[j].Z > under.From && hero[j].Z < under.To);
        Assert.True(back ? past.From > 0.3 : past.To < -0.3, $"{past}");
        var drawn = FigurePlate.Of(source, step);
        Assert.Equal(2, drawn.Split("class=\"ft\"").Length - 1);
    }

    /// <summary>A rail between two marks, before the hero or behind.</summary>
    private static PaperSource Going(string id, bool back)
    {
        var book = Ferry.Scene.Book.Own;
        var brief = new Brief
        {
            Floor = new FloorPlan { Width = new(1200), Depth = new(1200), MarkX = new(600), MarkY = new(600), Obstacles = [new Obstacle("rail", new(500), new(back ? 470 : 720), new(200), new(10)) { Kind = "rail", Rated = true }] },
            Hero = new HeroPart { Name = "Ines", Skill = Skill.Stunt },
            Attackers = [],
            Length = new Length(null, 1, 0),
            Marks = [new HeroMark("door", new(600), new(600)), new HeroMark("window", new(600), new(back ? 350 : 850))],
        };
        var routine = WrittenFight.Of(brief, book, "Bruno@6/400", "8 Bruno - vaults-over-right holds-off");
        routine = routine with { Moves = [new Move { Start = new(8), Technique = id, To = 1 }] };
        return PaperSource.Of(new Scene(routine.Brief, book), routine).With(PaperOptions.Default with { Cards = Ferry.Cards });
    }
}
