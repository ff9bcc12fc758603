using Generator.Domain;
using Generator.Solver.Proving;

namespace Generator.Solver.Refuting;

/// <summary>
/// The library closed over what these two bodies, this floor and the brief's setbacks allow: in which postures an attacker can be at all, and by what cheapest
/// way. Proves that somebody cannot go out, or that a hero moment cannot be.
/// <para>Sound because every move of a clean routine is in a class whose postures before and after hold the move's own, costs no more than the class says, and
/// because nothing else is asked: no time, no place, no stance or hand of the hero.</para>
/// </summary>
internal static class PostureRoutes
{
    public const int Never = int.MaxValue;

    private const int Postures = (int)Posture.Out + 1;

    public static IEnumerable<string> Against(Workings workings)
    {
        foreach (var moment in workings.Moments)
        {
            if (!moment.IsPossible)
            {
                yield return workings.Scene.Cast == 1 && moment.Moment.Moves.Any(m => TakesTwo(workings, m))
                    ? $"The hero moment {moment.Name} cannot be: it takes two attackers."
                    : $"The hero moment {moment.Name} cannot be: no version of it works with these performers, on this floor, at this tempo.";
            }
            else if (Unreachable(workings, moment))
            {
                yield return $"The hero moment {moment.Name} cannot be: nothing that these performers may do leaves an attacker in a posture that it needs.";
            }
        }

        foreach (var a in workings.MustOut)
        {
            if (!CanGoOut(workings, a))
            {
                yield return $"{workings.Name(a)} must be out at the end, but no finish can come about: none suits both performers, this floor and the tempo, or none can follow what else they allow.";
            }
        }
    }

    /// <summary>Something that these performers may do puts the attacker out.</summary>
    public static bool CanGoOut(Workings workings, int attacker) => Reached(workings, attacker)[(int)Posture.Out] != Never;

    private static int[] Reached(Workings workings, int attacker) => workings.Once(nameof(Reached), attacker, () => From(workings, attacker, _ => 0));

    /// <summary>The least that it costs to bring an attacker from ready into each posture; <see cref="Never"/> where nothing does.</summary>
    /// <param name="workings">The brief.</param>
    /// <param name="attacker">Whom.</param>
    /// <param name="cost">Of a move, not negative.</param>
    public static int[] From(Workings workings, int attacker, Func<MoveClass, int> cost) => From(workings, attacker, (move, sofar, _) => sofar + cost(move));

    /// <summary>The same where what a move costs hangs on what has been spent before it, and on whether it is the first that concerns the attacker.</summary>
    public static int[] From(Workings workings, int attacker, Func<MoveClass, int, bool, int> after)
    {
        var steps = workings.Once(nameof(Steps), attacker, () => Steps(workings, attacker));
        var least = Enumerable.Repeat(Never, Postures).ToArray();
        for (var grown = true; grown;)
        {
            grown = false;
            foreach (var (move, from, to) in steps)
            {
                var best = from.Contains(Posture.Ready) ? after(move, 0, true) : Never;
                for (var p = 0; p < Postures; p++)
                {
                    if (least[p] != Never && from.Contains((Posture)p))
                    {
                        best = Math.Min(best, after(move, least[p], false));
                    }
                }

                if (best < least[(int)to])
                {
                    (least[(int)to], grown) = (best, true);
                }
            }
        }

        return least;
    }

    /// <summary>Whatever changes an attacker's posture: moves on them, and moves on another that take them along or send somebody into them.</summary>
    private static List<(MoveClass Move, PostureSet From, Posture To)> Steps(Workings workings, int attacker)
    {
        var steps = new List<(MoveClass, PostureSet, Posture)>();
        var mustOut = workings.IsToBeOut(attacker);
        foreach (var move in workings.Moves)
        {
            var traits = move.Traits;
            if (traits.Attacker == attacker && traits.To is { } to && !(mustOut && to == Posture.Out && !traits.Finishes))
            {
                steps.Add((move, move.From, to));
            }

            if ((traits.AbleSeconds & (1 << attacker)) != 0 && traits.SecondLeaves is var leaves && !(mustOut && leaves == Posture.Out && !traits.Finishes))
            {
                steps.Add((move, traits.Second == SecondRole.Taken ? traits.SecondFrom : MoveClasses.Free, leaves));
            }
        }

        return steps;
    }

    /// <summary>For some move of the moment, nobody whom it may concern can be in a posture that it needs.</summary>
    private static bool Unreachable(Workings workings, WantedMoment moment)
    {
        for (var i = 0; i < moment.Moment.Moves.Count; i++)
        {
            if (!moment[i].Any(c => c.Traits.Attacker < 0 || c.From.Contains(Posture.Ready) || Reached(workings, c.Traits.Attacker).Where((l, p) => l != Never && c.From.Contains((Posture)p)).Any()))
            {
                return true;
            }
        }

        return false;
    }

    private static bool TakesTwo(Workings workings, MomentMove move) => workings.Scene.Book.Techniques.Where(t => t.GoesBy(move.Technique)).All(t => t.TakesTwo);
}
