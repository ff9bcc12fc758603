using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Judging;
using Generator.Rules.Replaying;
using Generator.Solver.Alternatives;
using Generator.Solver.Constructing;
using Generator.Solver.Reworking;
using MomentRule = Generator.Rules.Rules.Moments;

namespace Generator.Solver.Tests.Constructing;

/// <summary>A hero moment inside a run of moves that is to be kept is asked for once, as a part of the run.</summary>
public class NestedMomentsTests
{
    private static readonly MomentMove Throw = new("hip-throw", "Bruno", null, null);

    [Theory]
    [InlineData(-1, 0)]
    [InlineData(-1, 1)]
    [InlineData(-2, 1)]
    public void A_run_that_holds_the_moment_is_kept_and_the_moment_comes_once(int before, int after)
    {
        var (routine, at) = WithThrow(Drafts.Plain(new Moment([Throw], new HalfCounts(20), new HalfCounts(44))));
        var (first, last) = (at + before, at + after);
        var kept = Kept.Run(routine, first, last);
        var brief = routine.Brief with { Moments = [.. routine.Brief.Moments, kept] };
        var options = new AlternativesOptions { Number = 2, Time = Drafts.Hang };
        var result = AlternativeSearch.Of(brief, Drafts.Book, options, [routine]);
        Assert.Equal(2, result.Found.Count);
        foreach (var found in result.Found)
        {
            Assert.True(Audit.Of(new Scene(brief, Drafts.Book), found.Routine).IsClean);
            Assert.Single(Replay.Of(result.Scene, found.Routine), s => MomentRule.Matches(result.Scene, Throw, s));
        }
    }

    /// <summary>Kept is half of a moment of three moves, with what comes before or after it: the moment is there once, not once more for what is kept of it.</summary>
    [Theory]
    [InlineData(0, 0)]
    [InlineData(-1, 1)]
    [InlineData(1, 3)]
    public void Half_of_a_moment_is_kept_and_the_moment_comes_once(int from, int to)
    {
        MomentMove[] lead = [new("wrist-lock", "Bruno", null, null), new("stand-them-up", "Bruno", null, null), Throw];
        var (routine, at) = WithThrow(Drafts.Plain(new Moment(lead, null, null)));
        var kept = KeptMoves.Of(new Scene(routine.Brief, Drafts.Book), routine, [new LockedStretch(at - 2 + from, at - 2 + to, (0, 0))]);
        Assert.Equal(new LockedStretch(at - 2 + Math.Min(from, 0), at - 2 + Math.Max(to, 2), (0, 0)), Assert.Single(kept.Locked));
        var brief = routine.Brief with { Moments = kept.Moments };
        var result = AlternativeSearch.Of(brief, Drafts.Book, new AlternativesOptions { Number = 2, Locked = kept.Locked, Time = Drafts.Hang }, [routine]);
        Assert.Equal(2, result.Found.Count);
        Assert.All(result.Found, f =>
        {
            Assert.True(Audit.Of(new Scene(brief, Drafts.Book), f.Routine).IsClean);
            var steps = Replay.Of(result.Scene, f.Routine);
            Assert.Single(Enumerable.Range(0, steps.Count - 2), i => lead.Select((m, k) => MomentRule.Matches(result.Scene, m, steps[i + k])).All(also => also));
        });
    }

    [Fact]
    public void A_move_without_a_partner_is_kept_as_one_without_an_attack()
    {
        var routine = new Routine
        {
            Brief = Drafts.Plain(),
            LibraryVersion = string.Empty,
            Placements = [],
            Moves = [new Move { Start = new HalfCounts(4), Technique = "rise" }, new Move { Start = new HalfCounts(8), Attacker = 0, Technique = "uppercut-right", Reaction = "head-back" }],
        };
        Assert.Equal([1, -1], NestedMoments.Of(Drafts.Plain(new Moment([new("rise", null, MomentMove.NoAttack, null)], null, null), Kept.Run(routine, 0, 1)), Drafts.Book));
    }

    [Fact]
    public void What_a_moment_holds_is_told_by_its_words_and_not_by_their_order_in_the_brief()
    {
        var run = new Moment([new("knee-to-head-right", "Bruno", "none", "staggers-back"), new("hip-throw-left", "Bruno", "none", "thrown-over")], new HalfCounts(20), new HalfCounts(20));
        var lone = new Moment([Throw], null, null);
        var early = lone with { Latest = new HalfCounts(10) };
        var other = new Moment([Throw with { Attacker = "Wanda" }], null, null);
        Assert.Equal([1, -1, -1, -1], NestedMoments.Of(Drafts.Plain(lone, run, early, other), Drafts.Book).Select((w, i) => i == 2 ? -1 : w));
        Assert.Equal([-1, -1], NestedMoments.Of(Drafts.Plain(early, run), Drafts.Book));
        Assert.Equal([-1, 0], NestedMoments.Of(Drafts.Plain(lone, lone), Drafts.Book));
        Moment Within(int from, int to) => new([Throw], new HalfCounts(from), new HalfCounts(to));
        Assert.Equal([-1, -1], NestedMoments.Of(Drafts.Plain(Within(10, 14), Within(40, 44)), Drafts.Book));
        Assert.Equal([-1, 0], NestedMoments.Of(Drafts.Plain(Within(10, 14), Within(12, 44)), Drafts.Book));
    }

    /// <summary>
    /// A run that is kept at its count, and a moment whose window begins or ends just where its throw stands: the throw stays in the window, though the moves before it
    /// could be half a count shorter or longer, and does not come again.
    /// </summary>
    [Theory]
    [InlineData(0, 20)]
    [InlineData(-20, 0)]
    public void A_throw_at_the_edge_of_its_moment_stays_there_with_the_run_that_is_kept(int sooner, int later)
    {
        var (routine, at) = WithThrow(Drafts.Plain(new Moment([Throw], new HalfCounts(20), new HalfCounts(44))));
        var start = routine.Moves[at].Start.Value;
        var edge = new Moment([Throw], new HalfCounts(start + sooner), new HalfCounts(start + later));
        var brief = DraftBrief.Like(routine, routine.Brief with { Moments = [edge, Kept.Run(routine, at - 2, at)] }, Drafts.Book);
        var ground = new Ground(new Scene(DraftBrief.Complete(brief, Drafts.Book), Drafts.Book));
        var drafted = 0;
        for (var round = 0; round < 300 && drafted < 5; round++)
        {
            var dice = new Dice(Dice.SeedOf(1, 0, round));
            if (OpeningPlaces.Choose(ground, dice) is { } placements
                && new Beam(ground, dice, ground.Aims.Width(6), Beam.Noise(dice), int.MaxValue).Run(ground.Openings(placements), _ => { }, default) is { } finish)
            {
                drafted++;
                Assert.Single(Replay.Of(ground.Scene, Draftsman.Write(ground.Scene, finish).Routine), s => MomentRule.Matches(ground.Scene, Throw, s));
            }
        }

        Assert.True(drafted >= 3, $"{drafted} drafts");
    }

    private static (Routine Routine, int At) WithThrow(Brief brief)
    {
        for (var seed = 1; seed <= 20; seed++)
        {
            if (Drafts.Rounds(brief, seed).Routine is { } routine
                && routine.Moves.ToList().FindIndex(m => m.Technique!.StartsWith("hip-throw", StringComparison.Ordinal)) is >= 2 and var at && at + 2 < routine.Moves.Count)
            {
                return (routine, at);
            }
        }

        throw new InvalidOperationException("No seed gives a throw in the middle.");
    }
}
