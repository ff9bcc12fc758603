using Generator.Domain;
using Generator.Rules;

namespace Generator.Solver.Refuting;

/// <summary>
/// What the brief's own statements say against one another or against the library, each looked at by itself: moments outside the length, beyond the
/// performers, with more setbacks or pauses than are asked for, a last one who stays in.
/// <para>Sound because each looks at what one rule asks of one statement: ending, length, moments, setbacks, able.</para>
/// </summary>
internal static class Asked
{
    public static IEnumerable<string> Against(Workings workings) => [.. Endings(workings.Scene), .. Moments(workings.Scene)];

    private static IEnumerable<string> Endings(Scene scene)
    {
        if (scene.Brief.Ending is not { } ending)
        {
            yield break;
        }

        if (ending.Last is { } last && !ending.Out.Contains(last))
        {
            yield return $"{last} is to go out last, but is not among those who go out.";
        }
    }

    private static IEnumerable<string> Moments(Scene scene)
    {
        var end = scene.Brief.Length is { Counts: { } counts } length ? 2 * (counts + length.Tolerance) : int.MaxValue;
        foreach (var moment in scene.Brief.Moments)
        {
            var name = string.Join(", ", moment.Moves.Select(m => m.Technique));
            if (moment.Earliest is { } earliest && moment.Latest is { } latest && latest < earliest)
            {
                yield return $"The hero moment {name} may begin no later than count {latest.ToCountText()}, and no sooner than {earliest.ToCountText()}.";
            }
            else if (moment.Earliest is { } start && start.Value >= end)
            {
                yield return $"The hero moment {name} begins at count {start.ToCountText()} at the earliest, after the end of the routine.";
            }

            if (Count(scene, moment, t => t.Family == Family.Setback) > scene.Brief.Setbacks)
            {
                yield return $"The hero moment {name} has more setbacks than the brief asks for, which is {scene.Brief.Setbacks}.";
            }

            if (Count(scene, moment, t => t.IsStoryPause) > scene.Brief.Pauses)
            {
                yield return $"The hero moment {name} has more pauses than the brief asks for, which is {scene.Brief.Pauses}.";
            }

            foreach (var move in moment.Moves)
            {
                if (MomentFit.WhyNot(scene, move) is { } reason)
                {
                    yield return $"The hero moment {name} cannot be: {reason}.";
                }
            }
        }
    }

    /// <summary>Moves of a moment of which every version is of a kind.</summary>
    private static int Count(Scene scene, Moment moment, Func<Technique, bool> of) =>
        moment.Moves.Count(m => scene.Book.Techniques.Where(t => t.GoesBy(m.Technique)).ToList() is { Count: > 0 } versions && versions.TrueForAll(t => of(t)));
}
