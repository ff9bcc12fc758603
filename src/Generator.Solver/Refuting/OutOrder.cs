using Generator.Domain;

namespace Generator.Solver.Refuting;

/// <summary>
/// Who is out when. Proves that a hero moment is asked for on somebody whom another has put out before, or on somebody who must be out before the last one is.
/// <para>Sound because whoever is out stays out and nothing more is done to them, and because a moment whose every version puts its attacker out has done so by
/// the latest count at which it may start.</para>
/// </summary>
internal static class OutOrder
{
    public static IEnumerable<string> Against(Workings workings)
    {
        foreach (var ends in workings.Moments)
        {
            if (ends.Moment.Latest is not { } latest || PutsOut(ends) is not (>= 0 and var gone))
            {
                continue;
            }

            foreach (var later in workings.Moments.Where(m => m != ends && m.Moment.Earliest > latest))
            {
                var on = Concerns(later);
                if (on == gone)
                {
                    yield return $"{workings.Name(gone)} is out once {ends.Name} has happened, which is by count {latest.ToCountText()}; {later.Name} comes later.";
                }
                else if (on >= 0 && workings.Brief.Ending?.Last == workings.Name(gone) && workings.IsToBeOut(on))
                {
                    yield return $"{workings.Name(gone)} is to go out last, but is out once {ends.Name} has happened, which is by count {latest.ToCountText()}; {workings.Name(on)}, who must be out before, is still in for {later.Name}.";
                }
            }
        }
    }

    /// <summary>The attacker whom every version of the moment's first move puts out; −1 for none.</summary>
    private static int PutsOut(WantedMoment moment) =>
        moment.IsPossible && Concerns(moment) is >= 0 and var one && moment[0].All(c => c.Traits.To == Posture.Out) ? one : -1;

    /// <summary>The attacker whom every version of the moment's first move has as its target; −1 for none.</summary>
    private static int Concerns(WantedMoment moment) =>
        moment.IsPossible && moment[0].Select(c => c.Traits.Attacker).Distinct().ToList() is [var one] ? one : -1;
}
