using Generator.Domain;
using Generator.Rules;
using Generator.Solver.Repertoires;

namespace Generator.Solver.Constructing;

/// <summary>Reads the hero moments of a brief as what the search aims at: when they are owed, on which marks they can be done, and what leads up to them.</summary>
/// <param name="aims">Length, arc and marks of the brief.</param>
/// <param name="repertoire">What can be done.</param>
/// <param name="within">For each moment the one that holds it; −1 for none.</param>
internal sealed class MomentReading(Aims aims, Repertoire repertoire, int[] within)
{
    /// <summary>Share of the stay on its marks after which a moment that is bound to things there is owed.</summary>
    private const double OfStay = 0.4;

    private readonly Scene scene = aims.Scene;

    /// <summary>What is to be reached.</summary>
    /// <param name="moment">A hero moment of the brief.</param>
    /// <param name="index">Its place among them.</param>
    public MomentAim Of(Moment moment, int index)
    {
        var earliest = moment.Earliest?.Value ?? 0;
        var latest = moment.Latest?.Value ?? (aims.ByTime ? aims.HighTime : int.MaxValue);
        var due = moment.Earliest is null && moment.Latest is null
            ? aims.Total * (index + 0.6) / scene.Brief.Moments.Count
            : FirstBearable(moment.Moves[0].Technique, earliest, latest);
        var windows = NestedMoments.Windows(scene.Brief, index, within, scene.Book);
        var steps = moment.Moves.Select((m, s) => new MomentStep(scene, repertoire, m, windows[s])).ToArray();
        var marks = Marks(steps);
        due = moment.Earliest is null && moment.Latest is null ? OnItsMarks(due, marks) : due;
        return new MomentAim(steps, earliest, latest, due, Approach.To(scene, repertoire, steps[0].Techniques, steps[0].Attacker), Pairing.For(scene, steps[0]), OutOfSight(steps)) { Marks = marks, Place = AtThing.For(scene, steps[0]), Prop = PropAim.For(scene, steps[0]) };
    }

    /// <summary>A moment that no count binds, but a thing that stands near some marks, is owed while there is time to lead up to it before the hero leaves the last of them.</summary>
    private double OnItsMarks(double due, (int First, int Last) marks)
    {
        var count = scene.Marks.Count;
        if (count == 1 || (marks.First == 0 && marks.Last >= count - 1))
        {
            return due;
        }

        var comes = marks.First == 0 ? 0 : aims.TravelDue(marks.First);
        var goes = marks.Last < count - 1 ? aims.TravelsFrom(marks.Last + 1) : aims.Total;
        return Math.Clamp(due, comes, comes + (OfStay * (goes - comes)));
    }

    /// <summary>The marks from which all moves of a moment can be done; all where none seems to be one.</summary>
    private (int First, int Last) Marks(MomentStep[] steps)
    {
        var before = steps.Select((_, s) => steps.Take(s).Count(e => e.IsTravel(scene))).ToArray();
        var marks = scene.Marks.Count == 1 ? [] : Enumerable.Range(0, scene.Marks.Count)
            .Where(m => steps.Select((e, s) => (Step: e, Mark: m + before[s])).All(e => e.Mark < scene.Marks.Count && e.Step.IsPossibleOn(scene, repertoire, e.Mark))).ToList();
        return marks.Count == 0 ? (0, int.MaxValue) : (marks[0], marks[^1]);
    }

    private int[]? OutOfSight(MomentStep[] steps) =>
        Away([.. Enumerable.Range(0, Bearing.Circle).Where(b => steps.All(s => s.IsSeenAt(scene, b)))]);

    /// <summary>The first half count of a window at which the arc bears the weight of the technique; the first of all when it never does.</summary>
    private int FirstBearable(string technique, int earliest, int latest)
    {
        if (aims.Arc is null || !aims.ByTime)
        {
            return earliest;
        }

        var weight = scene.Book.Techniques.Where(t => t.GoesBy(technique)).Select(t => t.Weight).DefaultIfEmpty(0).Min();
        for (var start = earliest; start <= latest; start++)
        {
            if (aims.Arc.Caps[aims.Arc.PhaseOf(start, 0)] >= weight)
            {
                return start;
            }
        }

        return earliest;
    }

    /// <summary>For each bearing how many half hours it is from the nearest of those that are right; null where none is, or all are.</summary>
    public static int[]? Away(IReadOnlyCollection<int> right) => right.Count is 0 or Bearing.Circle ? null
        : [.. Enumerable.Range(0, Bearing.Circle).Select(b => right.Min(s => new Bearing(b).Apart(new Bearing(s))))];
}
