using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Replaying;
using Generator.Solver.Reworking;
using MomentRule = Generator.Rules.Rules.Moments;

namespace Generator.Solver.Alternatives;

/// <summary>What a brief asks for with some moves of a routine kept.</summary>
/// <param name="Moments">The brief's own, and what is kept.</param>
/// <param name="Locked">Moves that stay where others are filled anew, in the order of what is kept.</param>
public sealed record KeptMoves(IReadOnlyList<Moment> Moments, IReadOnlyList<LockedStretch> Locked)
{
    /// <summary>
    /// Where what is kept is part of a hero moment as the routine has it, the rest of the moment stays with it: filled anew, it would have to end just as what is kept
    /// begins.
    /// </summary>
    /// <param name="scene">The brief.</param>
    /// <param name="routine">The routine in hand.</param>
    /// <param name="kept">Moves of it that are to stay.</param>
    public static KeptMoves Of(Scene scene, Routine routine, IReadOnlyList<LockedStretch> kept)
    {
        var steps = Replay.Of(scene, routine);
        return new KeptMoves([.. scene.Brief.Moments, .. kept.Select(k => Run(routine, k))], [.. kept.Select(k => Whole(scene, steps, k))]);
    }

    private static LockedStretch Whole(Scene scene, IReadOnlyList<Step> steps, LockedStretch kept)
    {
        var (first, last) = (kept.First, kept.Last);
        foreach (var moment in scene.Brief.Moments)
        {
            foreach (var at in MomentRule.Standing(scene, moment, steps))
            {
                if (at <= kept.Last && at + moment.Moves.Count > kept.First)
                {
                    (first, last) = (Math.Min(first, at), Math.Max(last, at + moment.Moves.Count - 1));
                }
            }
        }

        return kept with { First = first, Last = last };
    }

    private static Moment Run(Routine routine, LockedStretch kept)
    {
        var start = routine.Moves[kept.First].Start.Value;
        HalfCounts? At(int? slip) => slip is { } by ? new HalfCounts(Math.Max(0, start + by)) : null;
        return Kept.Run(routine, kept.First, kept.Last, At(kept.Slip?.Sooner), At(kept.Slip?.Later));
    }
}
