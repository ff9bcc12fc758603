using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Judging;
using Generator.Solver.Completing;
using Generator.Solver.Tests.Constructing;

namespace Generator.Solver.Tests.Completing;

public class RefillTests
{
    private const int Attempts = 24;

    /// <summary>Everything before and behind a window stays, to the half count; with a slip what comes behind may be later by that much.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(4)]
    public void A_window_is_filled_otherwise_and_both_ends_stay(int slip)
    {
        var (windows, filled) = (0, 0);
        for (var seed = 0; seed < 6; seed++)
        {
            if (Drafts.Rounds(Drafts.Plain(), seed).Routine is not { Moves.Count: >= 9 } routine)
            {
                continue;
            }

            windows++;
            IReadOnlyList<LockedStretch> locked = [new(0, 2, (0, 0)), new(6, routine.Moves.Count - 1, (0, slip))];
            var ways = new Refill(routine, locked, Drafts.Book).Ways(seed, CancellationToken.None).Take(Attempts).OfType<Completed>().ToList();
            foreach (var way in ways)
            {
                var now = way.Routine.Moves;
                var more = now.Count - routine.Moves.Count;
                Assert.True(Audit.Of(new Scene(routine.Brief, Drafts.Book), way.Routine).IsClean);
                Assert.All(Enumerable.Range(0, routine.Moves.Count).Where(i => i is < 3 or >= 6), i => AssertStays(routine.Moves[i], now[i < 3 ? i : i + more], i < 3 ? 0 : slip));
            }

            filled += ways.Any(w => w.Routine.Moves.Count != routine.Moves.Count || Enumerable.Range(3, 3).Any(i => !string.Equals(w.Routine.Moves[i].Technique, routine.Moves[i].Technique, StringComparison.Ordinal))) ? 1 : 0;
        }

        Assert.True(windows >= 4 && filled >= 1, $"{filled} of {windows} windows");
    }

    private static void AssertStays(Move was, Move now, int slip)
    {
        Assert.Equal((was.Attacker, was.Attack, was.Technique, was.Reaction), (now.Attacker, now.Attack, now.Technique, now.Reaction));
        Assert.InRange(now.Start.Value - was.Start.Value, 0, slip);
    }
}
