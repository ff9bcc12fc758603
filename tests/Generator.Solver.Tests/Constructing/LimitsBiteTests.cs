using Generator.Domain;
using Generator.Solver.Questions;

namespace Generator.Solver.Tests.Constructing;

/// <summary>What limits, floor and skill forbid is not drafted, and without them it is.</summary>
public sealed class LimitsBiteTests
{
    private static readonly int[] Seeds = [1, 2, 3, 4];

    private static readonly Lazy<IReadOnlyList<Move>> Free = new(() => Moves(Both));

    private static Brief Both => Drafts.Plain() with { Attackers = [new AttackerPart { Name = "Bruno", Skill = Skill.Stunt }, new AttackerPart { Name = "Wanda", Skill = Skill.Stunt }] };

    /// <summary>Of the falls that drafts have without limits, the commonest.</summary>
    [Fact]
    public void A_class_of_falls()
    {
        var fall = Free.Value.Select(Fall).Where(f => f is not (FallClass.None or FallClass.ToKnee)).GroupBy(f => f).MaxBy(g => g.Count())!.Key;
        var limited = Moves(Both with { Attackers = [.. Both.Attackers.Select(a => a with { Limits = [Limit.On(fall)] })] });
        Assert.DoesNotContain(limited, m => Fall(m) == fall);
    }

    [Fact]
    public void A_hard_floor()
    {
        var hard = Moves(Both with { Floor = new FloorPlan { Surface = Surface.Hard } });
        Assert.Contains(Free.Value, m => Fall(m) is not (FallClass.None or FallClass.ToKnee));
        Assert.All(hard, m => Assert.True(Fall(m) is FallClass.None or FallClass.ToKnee));
        Assert.All(hard, m => Assert.True(Drafts.Book.Technique(m.Technique!).HeroFall is FallClass.None or FallClass.ToKnee));
    }

    [Fact]
    public void A_novice_hero_and_novice_attackers()
    {
        var novice = Moves(Both with { Hero = new HeroPart { Name = "Ines", Skill = Skill.Novice }, Attackers = [.. Both.Attackers.Select(a => a with { Skill = Skill.Novice })] });
        Assert.Contains(Free.Value, m => Drafts.Book.Technique(m.Technique!).HeroSkill > Skill.Novice);
        Assert.All(novice, m => Assert.Equal(Skill.Novice, Drafts.Book.Technique(m.Technique!).HeroSkill));
        Assert.All(novice, m => Assert.True(m.Reaction is null || Drafts.Book.Reaction(m.Reaction).Skill == Skill.Novice));
    }

    private static List<Move> Moves(Brief brief)
    {
        var drafted = Seeds.Select(seed => Drafts.Draft(brief, seed)).ToList();
        Assert.All(drafted, d => Assert.Equal(DraftStatus.Found, d.Status));
        return [.. drafted.SelectMany(d => d.Routine!.Moves)];
    }

    private static FallClass Fall(Move move) => move.Reaction is null ? FallClass.None : Drafts.Book.Reaction(move.Reaction).Fall;
}
