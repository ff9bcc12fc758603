using Generator.Domain;

namespace Generator.Rules.Replaying;

/// <summary>
/// The stances to which the hero changes in gaps, as they stand in the moves of a routine: whoever reads it then needs no rule for which of
/// several is chosen.
/// </summary>
public static class StanceNotes
{
    /// <summary>The routine with the stance in every move before which the hero changes, and in no other.</summary>
    public static Routine Written(Scene scene, Routine routine) => routine with
    {
        Moves = [.. Replay.From(scene, Replay.Open(scene, routine), routine).Zip(routine.Moves, (step, move) => move with
        {
            Stance = step.StanceTime is > 0 and < StanceTable.Never ? step.StanceStart : null,
        })],
    };

    /// <summary>The routine without any of them, as a search makes and compares moves.</summary>
    public static Routine LeftOut(Routine routine) =>
        routine.Moves.All(m => m.Stance is null) ? routine : routine with { Moves = [.. routine.Moves.Select(m => m with { Stance = null })] };
}
