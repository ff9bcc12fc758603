using FsCheck.Xunit;
using Generator.Domain;
using Generator.Solver.Reworking;
using Generator.Testing;

namespace Generator.Solver.Tests.Reworking;

public class RoutineChangeTests
{
    [Property(Arbitrary = [typeof(Routines)])]
    public bool A_routine_does_not_differ_from_itself(Routine routine) => RoutineChange.Between(routine, routine).IsNothing;

    [Property(Arbitrary = [typeof(Routines)], MaxTest = 60)]
    public bool The_fewest_changes_are_those_of_the_naive_twin(Routine routine)
    {
        var chance = new Chance(routine.Moves.Count);
        var old = routine with { Moves = [.. routine.Moves.Take(6)] };
        var now = routine with { Moves = [.. old.Moves.Where(_ => chance.Percent(70)).Concat(routine.Moves.Skip(4).Take(2))] };
        var change = RoutineChange.Between(old, now);
        var covered = change.Moves.Count(m => m.Old >= 0) == old.Moves.Count && change.Moves.Count(m => m.Now >= 0) == now.Moves.Count;
        return covered && change.Changed == Naive(old.Moves, now.Moves);
    }

    [Fact]
    public void A_move_put_in_does_not_make_the_later_ones_count_as_changed()
    {
        var old = RandomRoutine.Of(11, TinyBook.Book);
        Assert.True(old.Moves.Count > 3);
        var now = old with { Moves = [old.Moves[0], old.Moves[0] with { Technique = "rise", Attack = null, Attacker = null, Reaction = null }, .. old.Moves.Skip(1).Select(m => m with { Start = m.Start + new HalfCounts(2) })] };
        var change = RoutineChange.Between(old, now);
        Assert.Equal(1, change.Changed);
        Assert.Equal(2 * (old.Moves.Count - 1), change.Shift);
        Assert.Equal(ChangeKind.Added, change.Moves[1].Kind);
    }

    /// <summary>Edit distance by trying everything.</summary>
    private static int Naive(IEnumerable<Move> old, IEnumerable<Move> now)
    {
        if (!old.Any() || !now.Any())
        {
            return old.Count() + now.Count();
        }

        var both = Naive(old.Skip(1), now.Skip(1)) + (RoutineChange.IsSame(old.First(), now.First()) ? 0 : 1);
        return Math.Min(both, 1 + Math.Min(Naive(old.Skip(1), now), Naive(old, now.Skip(1))));
    }
}
