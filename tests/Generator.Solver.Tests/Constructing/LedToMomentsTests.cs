using Generator.Domain;
using Generator.Library.Files;
using Generator.Rules;
using Generator.Rules.Replaying;
using Generator.Solver.Constructing;
using Generator.Solver.Questions;

namespace Generator.Solver.Tests.Constructing;

/// <summary>Over several marks the search leads up to moments at things and with props: before it did, whether they came about hung on the seed.</summary>
public sealed class LedToMomentsTests
{
    private const int HeadToTable = 0, TakesBottle = 1, OntoPadding = 2;

    private static readonly Brief Inn = BundledScenario.All.Single(s => s.Name == "inn").BriefBy(Drafts.Book);

    private static readonly Brief Loose = Inn with { Moments = [.. Inn.Moments.Select(m => m with { Earliest = null, Latest = null })] };

    private static readonly Ground Ground = GroundOf(Inn);

    /// <summary>Of seeds 1 to 12 one had the inn in two rounds before.</summary>
    [Fact]
    public void Nearly_every_seed_finds_the_fight_through_the_inn() => Assert.InRange(Enumerable.Range(1, 4).Count(seed => IsFound(Inn, seed)), 3, 4);

    [Fact]
    public void And_so_it_does_where_no_count_binds_the_moments() => Assert.InRange(Enumerable.Range(6, 3).Count(seed => IsFound(Loose, seed)), 2, 3);

    [Theory]
    [InlineData(HeadToTable, 0)]
    [InlineData(OntoPadding, 2)]
    public void Whoever_a_moment_needs_before_a_thing_is_owed_there(int moment, int mark)
    {
        var (aim, state) = (Ground.Aims.Moments[moment], At(mark, 200));
        var named = aim.Steps[0].Attacker;
        int[] serving = [.. aim.Steps[0].BearingsAt(Ground.Scene, mark)!];
        Assert.InRange(serving.Length, 1, Bearing.Circle / 2);
        foreach (var bearing in Enumerable.Range(0, Bearing.Circle))
        {
            var away = serving.Min(s => new Bearing(bearing).Apart(new Bearing(s)));
            var placed = state with { Attackers = new FixedList<AttackerState>([.. state.Attackers.Select((a, i) => named < 0 || i == named ? a with { Bearing = bearing } : a)]) };
            Assert.Equal(away == 0, aim.Place!.Owed(placed, aim.Due) == 0);
            Assert.Equal(away, aim.Place.HalfHoursOff(placed, Math.Max(0, named), aim.Due)![bearing]);
        }
    }

    /// <summary>A moment that is far off leads nobody about.</summary>
    [Fact]
    public void Nobody_is_owed_at_a_thing_too_soon()
    {
        var aim = Ground.Aims.Moments[OntoPadding];
        Assert.NotNull(aim.Place!.HalfHoursOff(At(2, 200), aim.Steps[0].Attacker, aim.Due));
        Assert.Null(aim.Place.HalfHoursOff(At(2, 0), aim.Steps[0].Attacker, aim.Due));
        Assert.Equal(0, aim.Place.Owed(At(2, 0), aim.Due));
    }

    [Fact]
    public void A_bottle_that_its_moment_needs_is_not_let_go()
    {
        var (prop, state) = (Ground.Aims.Moments[TakesBottle].Prop!, At(1, 0));
        var lying = state with { Props = new FixedList<PropState>([.. state.Props.Select(p => p with { Holder = PropState.NoOne })]) };
        var broken = state with { Props = new FixedList<PropState>([.. lying.Props.Select(p => p with { Broken = true })]) };
        Assert.Equal(0, prop.Owed(state, 80));
        Assert.True(prop.Owed(lying, 80) > 2);
        Assert.Equal([false, false, true], new[] { state, lying, broken }.Select(prop.IsLost));
    }

    /// <summary>Whoever throws somebody needs both hands, when the time comes.</summary>
    [Fact]
    public void The_hero_is_owed_empty_hands()
    {
        var (prop, state) = (Ground.Aims.Moments[OntoPadding].Prop!, At(2, 60));
        var armed = state with { Props = new FixedList<PropState>([.. state.Props.Select((p, i) => i == 0 ? p with { Holder = -1, Hand = PropHand.Right } : p)]) };
        Assert.Equal(0, prop.Owed(state, 60));
        Assert.True(prop.Owed(armed, 60) > 0);
        Assert.Equal(0, prop.Owed(armed, 120));
    }

    /// <summary>There luck has the whole fight.</summary>
    [Fact]
    public void Over_one_mark_nothing_is_led_up_to() =>
        Assert.All(GroundOf(Loose with { Marks = [] }).Aims.Moments, m => Assert.True(m is { Place: null, Prop: null }));

    private static Ground GroundOf(Brief brief) => new(new Scene(DraftBrief.Complete(brief, Drafts.Book), Drafts.Book));

    /// <summary>How everybody stands before the first count, as if the hero were on that mark at that half count.</summary>
    private static FightState At(int mark, int time) =>
        Ground.Openings(OpeningPlaces.Choose(Ground, new Dice(1))!).First().State with { Mark = mark, Time = time };

    /// <summary>Within two rounds; it ends at the first routine.</summary>
    private static bool IsFound(Brief brief, int seed)
    {
        using var ends = new CancellationTokenSource();
        return Drafting.Draft(brief, Drafts.Book, new DraftOptions { Seed = seed, Rounds = 2, Time = Drafts.Hang }, new StopAtFirst(ends), ends.Token).Status == DraftStatus.Found;
    }

    private sealed class StopAtFirst(CancellationTokenSource stop) : IProgress<DraftProgress>
    {
        public void Report(DraftProgress value) => stop.Cancel();
    }
}
