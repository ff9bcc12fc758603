using Generator.Domain;
using Generator.Rules.Judging;
using Generator.Solver.Repairing;
using Generator.Solver.Reworking;
using Generator.Solver.Tests.Constructing;
using Generator.Solver.Tests.Twin;
using Xunit.Abstractions;

namespace Generator.Solver.Tests.Repairing;

/// <summary>
/// On worlds small enough to try every routine, no repair changes fewer moves than the one that is found, of those that change as many none is milder (keeps more
/// techniques, attacks or sides), and of those none shifts by fewer counts.
/// </summary>
public sealed class SmallestRepairTests(ITestOutputHelper output)
{
    private const int Compared = 14;

    /// <param name="breaks">How the routine is spoilt.</param>
    /// <param name="needs">What the smallest repair, by trying everything, must come to.</param>
    /// <param name="least">Repairs of that kind that the test must have met.</param>
    [Theory]
    [InlineData(Break.OneMove, Need.OneMove, 9)]
    [InlineData(Break.TwoMoves, Need.TwoMoves, 3)]
    [InlineData(Break.Counts, Need.CountsOnly, 7)]
    [InlineData(Break.Both, Need.Both, 3)]
    public void Nothing_smaller_exists_in_worlds_where_everything_can_be_tried(Break breaks, Need needs, int least)
    {
        var met = new Dictionary<Need, int>();
        var (compared, proven) = (0, 0);
        for (var seed = 1; seed <= 600 && compared < Compared; seed++)
        {
            var world = new TinyWorld(seed);
            var clean = Exhaustive.Routines(world);
            if (clean.Count == 0 || Spoilt(world, clean, breaks, seed) is not { } broken)
            {
                continue;
            }

            compared++;
            var (mildest, shift) = clean.Select(r => Told(world, broken, r)).Min();
            var fewest = (int)(mildest / Mildness.OneMove);
            var result = Repair.Of(broken, world.Book, new RepairOptions { Time = Drafts.Hang });
            var change = result.Repaired?.Change;
            Assert.True(
                result.Repaired is { } found && Told(world, broken, found.Routine).CompareTo((mildest, shift)) <= 0,
                $"seed {seed}: {(change is null ? 0 : Told(world, broken, result.Repaired!.Routine).Mildness / (double)Mildness.OneMove)} moves and {change?.Shift} half counts change, {mildest / (double)Mildness.OneMove} and {shift} are enough:\n{Told(broken)}\n{Told(clean.MinBy(c => Told(world, broken, c))!)}\n{(result.Repaired is { } r ? Told(r.Routine) : "nothing: " + string.Join(" ", result.Clash))}");
            Assert.True(Audit.Of(world.Scene, result.Repaired!.Routine).IsClean);
            Assert.True(!result.FewestProven || change!.Changed <= fewest, $"seed {seed}: {change!.Changed} moves are called proven, {fewest} are enough");
            proven += result.FewestProven ? 1 : 0;
            var need = (fewest, shift) switch { (0, _) => Need.CountsOnly, (_, > 0) => Need.Both, (1, _) => Need.OneMove, _ => Need.TwoMoves };
            met[need] = met.GetValueOrDefault(need) + 1;
        }

        var covered = string.Join(", ", met.Select(m => $"{m.Key} {m.Value}"));
        output.WriteLine($"{compared} repairs after {breaks}: {covered}; {proven} proven");
        Assert.True(compared == Compared && met.GetValueOrDefault(needs) >= least && proven > 0, $"{compared}: {covered}; {proven} proven");
    }

    /// <summary>How a routine is spoilt.</summary>
    public enum Break
    {
        OneMove,
        TwoMoves,
        Counts,
        Both,
    }

    /// <summary>What the smallest repair comes to.</summary>
    public enum Need
    {
        CountsOnly,
        OneMove,
        TwoMoves,
        Both,
    }

    private static (long Mildness, int Shift) Told(TinyWorld world, Routine broken, Routine repaired) =>
        RoutineChange.Between(broken, repaired) is var change ? (Mildness.Of(world.Book, broken, repaired, change), change.Shift) : default;

    private static string Told(Routine routine) =>
        string.Join(" ; ", routine.Moves.Select(m => $"{m.Start} {m.Attacker} {m.From} {m.Cue} {m.Attack} {m.Technique} {m.Reaction} {m.Linger.Value}"));

    /// <summary>One of the clean routines written otherwise, so that it is clean no more; null when that did not come about.</summary>
    private static Routine? Spoilt(TinyWorld world, IReadOnlyList<Routine> clean, Break breaks, int seed)
    {
        var dice = new Random(seed);
        for (var attempt = 0; attempt < 60; attempt++)
        {
            var moves = clean[dice.Next(clean.Count)].Moves.ToArray();
            var places = Enumerable.Range(0, moves.Length).ToArray();
            dice.Shuffle(places);
            if (breaks == Break.TwoMoves && places.Length < 2)
            {
                continue;
            }

            foreach (var at in places.Take(breaks switch { Break.Counts => 0, Break.TwoMoves => 2, _ => 1 }))
            {
                var technique = world.Book.Techniques[dice.Next(world.Book.Techniques.Count)];
                moves[at] = moves[at] with { Technique = technique.Id, Reaction = technique.Reactions.Count > 0 ? technique.Reactions[0] : null };
            }

            if (breaks is Break.Counts or Break.Both)
            {
                var at = places[^1];
                moves[at] = moves[at] with { Start = new HalfCounts(Math.Max(0, moves[at].Start.Value - 1 - dice.Next(2))) };
            }

            if (!Audit.Of(world.Scene, clean[0] with { Moves = moves }).IsClean)
            {
                return clean[0] with { Moves = moves };
            }
        }

        return null;
    }
}
