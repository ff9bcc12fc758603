using Generator.Domain;
using Generator.Domain.Sketches;
using Generator.Rules;
using Generator.Rules.Judging;
using Generator.Solver.Completing;
using Key = (string Rule, int Move, string Who);

namespace Generator.Solver.Diagnosing;

/// <summary>
/// Findings of a whole routine under those with which they vanish, which is seen by mending it: the engine fills the routine as a sketch so that nothing is unsafe or broken, its changes are made one after
/// another (<see cref="Mending"/>), and what is gone from one of them on stands under the first of what went with it.
/// </summary>
public static class Folds
{
    /// <summary>Moves tried to mend the routine, for each finding and at most in all: some seconds where there is much to fold. What could not be mended by then stays unfolded.</summary>
    private const long WorkEach = 20_000, MostWork = 1_100_000;

    /// <summary>Every finding of the verdict once, as a heading or folded under one, headings in the order of the counts.</summary>
    public static IReadOnlyList<Fold> Of(Scene scene, Routine routine, Verdict verdict)
    {
        if (scene.Brief.Travels || verdict.IsClean || routine.Moves.Count == 0 || Complete.Soon(Sketch.Of(routine), scene.Book, Math.Min(MostWork, WorkEach * verdict.Findings.Count)) is not { } mended)
        {
            return Fold.None(verdict);
        }

        var changes = new Mending(scene, routine, mended).Changes().ToList();
        var faults = changes.ConvertAll(c => Faults(scene, c));
        return
        [
            .. verdict.Findings.GroupBy(f => GoneAt(f, faults)).SelectMany(g => g.Key < 0 ? g.Select(f => new Fold(f, [], string.Empty)) : [Headed([.. g], changes[g.Key].Told)])
                .OrderBy(f => f.Finding.Count).ThenBy(f => f.Finding.Move).ThenByDescending(f => f.Finding.Severity).ThenBy(f => f.Finding.Rule, StringComparer.Ordinal),
        ];
    }

    /// <summary>The gravest of what went together heads it, of those the first.</summary>
    private static Fold Headed(List<Finding> gone, string mend)
    {
        var heading = gone.OrderByDescending(f => f.Severity).ThenBy(f => f.Count).ThenBy(f => f.Move).First();
        return new Fold(heading, [.. gone.Where(f => f != heading).OrderBy(f => f.Count).ThenBy(f => f.Move)], mend);
    }

    /// <summary>The first change from which on the finding is gone for good; −1 where it stays to the end.</summary>
    private static int GoneAt(Finding finding, List<HashSet<Key>> faults)
    {
        var last = faults.FindLastIndex(f => f.Contains((finding.Rule, finding.Move, finding.Who)));
        return last + 1 < faults.Count ? last + 1 : -1;
    }

    private static HashSet<Key> Faults(Scene scene, Change change) =>
        [.. Audit.Of(scene, change.Routine).Findings.Select(f => (f.Rule, f.Move >= 1 && f.Move <= change.Written.Count ? change.Written[f.Move - 1] : f.Move, f.Who))];
}
