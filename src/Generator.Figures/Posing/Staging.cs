using Generator.Figures.Bodies;
using Generator.Figures.Poses;

namespace Generator.Figures.Posing;

/// <summary>Puts two posed bodies on the floor: whoever does it at the origin, the other one ahead.</summary>
internal static class Staging
{
    /// <param name="doer">How whoever does it holds themselves.</param>
    /// <param name="other">How the other one does; null where there is none.</param>
    /// <param name="instant">How they stand to each other and what is aimed; its turns and distance are given.</param>
    /// <param name="statures">Metres.</param>
    /// <param name="otherStands">The other one as they stand already; null for their pose.</param>
    public static Pair Of(Pose doer, Pose? other, Instant instant, (double Doer, double Other) statures, Figure? otherStands = null)
    {
        var first = Kinematics.Of(doer, statures.Doer).TurnedLeft(instant.Turn ?? 0);
        if (other is null && otherStands is null)
        {
            return new Pair(first, null, 0);
        }

        var mean = (statures.Doer + statures.Other) / 2;
        var second = otherStands ?? Kinematics.Of(other!, statures.Other).TurnedLeft(180 + (instant.OtherTurn ?? 0))
            .Moved(new Vec(instant.Aside * mean, instant.OtherLift * mean, (instant.Distance ?? 0) * mean));
        (first, var missing) = Clearing.Of(first, second, instant.Aims, stays: instant.SecondAims.Count > 0);
        (second, _) = Aiming.At(second, first, instant.OtherAims);
        return new Pair(first, second, missing) { Marks = [.. Aiming.Marks(first, second, instant.Aims), .. Aiming.Marks(second, first, instant.OtherAims)] };
    }
}
