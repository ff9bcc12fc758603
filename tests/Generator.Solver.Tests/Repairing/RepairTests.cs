using FsCheck;
using FsCheck.Fluent;
using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Judging;
using Generator.Solver.Repairing;
using Generator.Solver.Reworking;
using Generator.Solver.Tests.Constructing;
using Generator.Testing;

namespace Generator.Solver.Tests.Repairing;

public class RepairTests
{
    [Fact]
    public void A_clean_routine_comes_back_as_it_is()
    {
        var drafted = 0;
        Prop.ForAll(Briefs.Seeds().ToArbitrary(), seed =>
        {
            if (Drafts.OfSmall(seed).Routine is not { } routine)
            {
                return true.Classify(true, "nothing drafted");
            }

            drafted++;

            var result = Repair.Of(routine, Drafts.Book, new RepairOptions());
            return (result.WasClean && result.Repaired!.Routine == routine && result.Repaired.Change.IsNothing).Classify(true, "clean");
        }).Check(Config.QuickThrowOnFailure.WithMaxTest(8));
        Assert.True(drafted >= 4, $"{drafted} of 8 drafted");
    }

    [Fact]
    public void Planted_breaks_are_repaired_with_no_more_changes_than_were_planted()
    {
        var (repaired, fewest) = (0, 0);
        for (var seed = 1; seed <= 6; seed++)
        {
            var clean = Drafts.OfPlain(seed);
            var broken = Planted.In(clean, Drafts.Book, 1, seed);
            var answer = Planted.Repaired(broken, Drafts.Book, 1).Repaired!;
            Assert.True(Audit.Of(new Scene(broken.Brief, Drafts.Book), answer.Routine).IsClean);
            Assert.Equal(answer.Change.Moves, RoutineChange.Between(broken, answer.Routine).Moves);
            repaired++;
            fewest += answer.Change.Changed <= 1 ? 1 : 0;
        }

        Assert.Equal((6, 6), (repaired, fewest));
    }

    [Fact]
    public void Moves_that_stay_do_stay()
    {
        var clean = Drafts.OfPlain(3);
        var broken = Planted.In(clean, Drafts.Book, 1, 3);
        var wrong = Enumerable.Range(0, clean.Moves.Count).First(i => clean.Moves[i] != broken.Moves[i]);
        var first = Planted.Repaired(broken, Drafts.Book, 1).Repaired!;
        var touched = first.Change.Moves.Where(m => m.Kind == ChangeKind.Changed).Select(m => m.Old).ToList();
        var kept = Enumerable.Range(0, broken.Moves.Count).First(i => !touched.Contains(i) && Math.Abs(i - wrong) == 1);
        var result = Planted.Repaired(broken, Drafts.Book, int.MaxValue, (kept, kept));
        Assert.Contains(result.Repaired!.Change.Moves, m => m.Old == kept && m.Kind is ChangeKind.Kept or ChangeKind.Shifted);
        Assert.Contains(result.Repaired.Routine.Moves, m => RoutineChange.IsSame(broken.Moves[kept], m) && m.Start == broken.Moves[kept].Start);
        Assert.Equal(broken.Brief.Moments, result.Repaired.Routine.Brief.Moments);
    }

    [Fact]
    public void A_late_move_is_only_shifted()
    {
        var clean = Drafts.OfPlain(2);
        var at = Enumerable.Range(1, clean.Moves.Count - 1).First(i => Broken(clean, i));
        var result = Repair.Of(Early(clean, at), Drafts.Book, new RepairOptions { Time = Drafts.Hang });
        Assert.Equal(0, result.Repaired!.Change.Changed);
        Assert.True(result.FewestProven);
        Assert.True(result.Repaired.Change.Shift > 0);
    }

    [Fact]
    public void A_brief_that_cannot_be_is_said_so_at_once()
    {
        var routine = Drafts.OfPlain(1);
        var brief = routine.Brief with { Moments = [new Moment([new MomentMove("moon-kick", null, null, null)], null, null)] };
        var result = Repair.Of(routine with { Brief = brief }, Drafts.Book, new RepairOptions());
        Assert.Null(result.Repaired);
        Assert.Contains(result.Clash, c => c.Contains("there is no technique moon-kick", StringComparison.Ordinal));
    }

    [Fact]
    public void A_stop_before_anything_was_found_gives_nothing()
    {
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        var broken = Planted.In(Drafts.OfPlain(3), Drafts.Book, 1, 3);
        var result = Repair.Of(broken, Drafts.Book, new RepairOptions(), null, stop.Token);
        Assert.Null(result.Repaired);
        Assert.Empty(result.Clash);
        Assert.False(result.SmallerTried);
    }

    private static bool Broken(Routine routine, int at) => !Audit.Of(new Scene(routine.Brief, Drafts.Book), Early(routine, at)).IsClean;

    private static Routine Early(Routine routine, int at)
    {
        var moves = routine.Moves.ToArray();
        moves[at] = moves[at] with { Start = new HalfCounts(Math.Max(0, moves[at].Start.Value - 1)) };
        return routine with { Moves = moves };
    }
}
