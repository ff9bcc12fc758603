using Load = Generator.Paperwork.Teaching.Load;

namespace Generator.Paperwork.Tests.Teaching;

/// <summary>What a day of rehearsal may ask of somebody.</summary>
public class LoadTests
{
    private static readonly Load Budget = new(6, 9, 20);

    [Fact]
    public void As_much_as_the_budget_fits_and_one_more_of_anything_does_not()
    {
        Assert.True(Budget.FitsIn(Budget));
        Assert.False((Budget + new Load(1, 0, 0)).FitsIn(Budget));
        Assert.False((Budget + new Load(0, 1, 0)).FitsIn(Budget));
        Assert.False((Budget + new Load(0, 0, 1)).FitsIn(Budget));
    }

    [Fact]
    public void Nobody_sells_more_head_hits_in_a_day_than_the_brief_allows()
    {
        var budget = Load.BudgetOf(Ferry.Scene, Ferry.Steps);
        Assert.All(budget, b => Assert.Equal(Ferry.Scene.Brief.Safety.HeadHitsPerDay, b.HeadHits));
    }

    [Fact]
    public void Somebody_who_may_fall_once_a_run_falls_no_oftener_in_a_day_than_there_are_runs()
    {
        var steps = Fights.Steps(Fights.Night);
        var budget = Load.BudgetOf(Fights.SceneOf(Fights.Night), steps);
        Assert.Equal(Math.Min(Fights.Ferry.Safety.FallsPerDay, Fights.Ferry.Safety.Runs), budget[2].Falls);
        Assert.Equal(Fights.Ferry.Safety.FallsPerDay, budget[1].Falls);
    }
}
