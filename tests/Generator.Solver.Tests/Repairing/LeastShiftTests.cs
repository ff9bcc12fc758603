using Generator.Domain;
using Generator.Library;
using Generator.Solver.Repairing;

namespace Generator.Solver.Tests.Repairing;

/// <summary>
/// A schedule broken because one activity takes longer, repaired with the least total shift of starts (El Sakkout and Wallace 2000): A of 3 at 0,
/// B of 2 at 3 and C of 4 at 6; A grows to 5, and the only least repair is B at 5 and C at 7.
/// </summary>
public class LeastShiftTests
{
    [Fact]
    public void Only_so_much_shifts_as_must()
    {
        var beats = new[] { Beat("a", 5), Beat("b", 2), Beat("c", 4) };
        var book = new Book("beats", Testing.TinyBook.Book.Stances, Testing.TinyBook.Book.Settle, beats, [], []);
        var routine = new Routine
        {
            Brief = new Brief { Attackers = [new AttackerPart { Name = "Ash" }] },
            Placements = [new Placement(default, new Centimetres(300), HalfCounts.FromCounts(20))],
            Moves = [Move("a", 0), Move("b", 3), Move("c", 6)],
        };
        var result = Repair.Of(routine, book, new RepairOptions { Time = Constructing.Drafts.Hang });
        Assert.Equal([0, 5, 7], result.Repaired!.Routine.Moves.Select(m => m.Start.Value));
        Assert.Equal((0, 3), (result.Repaired.Change.Changed, result.Repaired.Change.Shift));
        Assert.True(result.FewestProven);
    }

    private static Move Move(string technique, int start) => new() { Technique = technique, Start = new HalfCounts(start) };

    private static Technique Beat(string id, int length) => new()
    {
        Id = id,
        BaseId = id,
        Name = id,
        Family = Family.Pause,
        Starts = StanceSet.Of(Enum.GetValues<Stance>()),
        Band = new Band(Limb.Arm, 0, 9, default, default, false),
        Length = new HalfCounts(length),
        FewestSeconds = 0.1m,
        Weight = 1,
    };
}
