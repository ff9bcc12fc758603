using Generator.Domain;
using Generator.Rules.Judging;
using Generator.Rules.Replaying;
using Generator.Solver.Repairing;
using Generator.Solver.Reworking;
using Generator.Solver.Tests.Twin;
using Xunit.Abstractions;

namespace Generator.Solver.Tests.Repairing;

/// <summary>On worlds small enough to try every routine, no repair changes fewer moves than the one that is found.</summary>
public sealed class SmallestRepairTests(ITestOutputHelper output)
{
    [Fact]
    public void Nothing_smaller_exists_in_worlds_where_everything_can_be_tried()
    {
        var (compared, missed, changed) = (0, 0, new int[4]);
        for (var seed = 1; seed <= 400 && compared < 30; seed++)
        {
            var world = new TinyWorld(seed);
            var clean = Exhaustive.Routines(world);
            if (clean.Count == 0 || Spoilt(world, clean, seed) is not { } broken)
            {
                continue;
            }

            compared++;
            var least = clean.Min(r => RoutineChange.Between(broken, r).Changed);
            var result = Repair.Of(broken, world.Book, new RepairOptions { Time = TimeSpan.FromSeconds(10) });
            if (result.Repaired is null || result.Repaired.Change.Changed > least)
            {
                missed++;
                output.WriteLine($"seed {seed}: {result.Repaired?.Change.Changed} moves change, {least} are enough:\n{Told(broken)}\n{Told(clean.MinBy(r => RoutineChange.Between(broken, r).Changed)!)}");
                continue;
            }

            Assert.True(Audit.Of(world.Scene, result.Repaired.Routine).IsClean);
            changed[Math.Min(3, least)]++;
        }

        output.WriteLine($"{compared} repairs, {missed} of them not the smallest, by fewest changes {string.Join(", ", changed)}");
        Assert.True(compared >= 30 && changed[1] >= 8 && changed[0] + changed[2] >= 4, $"{compared}: {string.Join(", ", changed)}");
        Assert.Equal(0, missed);
    }

    private static string Told(Routine routine) =>
        string.Join(" ; ", routine.Moves.Select(m => $"{m.Start} {m.Attacker} {m.From} {m.Cue} {m.Attack} {m.Technique} {m.Reaction} {m.Linger.Value}"));

    /// <summary>One of the clean routines with a move or two written otherwise, so that it is clean no more.</summary>
    private static Routine? Spoilt(TinyWorld world, IReadOnlyList<Routine> clean, int seed)
    {
        var dice = new Random(seed);
        for (var attempt = 0; attempt < 30; attempt++)
        {
            var moves = clean[dice.Next(clean.Count)].Moves.ToArray();
            for (var i = 0; i <= dice.Next(2); i++)
            {
                var at = dice.Next(moves.Length);
                var technique = world.Book.Techniques[dice.Next(world.Book.Techniques.Count)];
                moves[at] = dice.Next(3) == 0
                    ? moves[at] with { Start = new HalfCounts(Math.Max(0, moves[at].Start.Value - 1 - dice.Next(2))) }
                    : moves[at] with { Technique = technique.Id, Reaction = technique.Reactions.Count > 0 ? technique.Reactions[0] : null };
            }

            var routine = clean[0] with { Moves = moves };
            if (!Audit.Of(world.Scene, routine).IsClean)
            {
                return routine;
            }
        }

        return null;
    }
}
