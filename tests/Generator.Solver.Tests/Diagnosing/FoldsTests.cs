using Generator.Domain;
using Generator.Domain.Sketches;
using Generator.Rules;
using Generator.Rules.Judging;
using Generator.Solver.Completing;
using Generator.Solver.Diagnosing;
using Generator.Solver.Tests.Constructing;
using Generator.Solver.Tests.Repairing;

namespace Generator.Solver.Tests.Diagnosing;

public class FoldsTests
{
    private const int Cases = 12;

    /// <summary>Moves written over spoil others after them; what is found comes to few more headings than moves were written over.</summary>
    [Fact]
    public void Findings_of_spoilt_moves_fold_to_about_as_many_headings()
    {
        var (planted, findings, headings, folded) = (0, 0, 0, 0);
        Each(Cases, (scene, broken, breaks, verdict) =>
        {
            var folds = Folds.Of(scene, broken, verdict);
            Assert.Equal(
                verdict.Findings.OrderBy(f => f.Move).ThenBy(f => f.Rule, StringComparer.Ordinal).ThenBy(f => f.Message, StringComparer.Ordinal),
                folds.SelectMany(f => f.Folded.Prepend(f.Finding)).OrderBy(f => f.Move).ThenBy(f => f.Rule, StringComparer.Ordinal).ThenBy(f => f.Message, StringComparer.Ordinal));
            Assert.All(folds.Where(f => f.Folded.Count > 0 || f.Finding.Severity >= Severity.Broken), f => Assert.NotEmpty(f.Mend));
            planted += breaks;
            findings += verdict.Findings.Count(f => f.Severity >= Severity.Broken);
            headings += folds.Count(f => f.Finding.Severity >= Severity.Broken);
            folded += folds.Sum(f => f.Folded.Count);
        });
        Assert.True(findings > 2 * planted && folded > planted && headings <= 2 * planted, $"{planted} planted, {findings} unsafe or broken, {headings} headings, {folded} folded");
    }

    /// <summary>Changes are made one upon the other until the routine is as it was mended, and each leaves every move with the number that it had.</summary>
    [Fact]
    public void The_last_change_leaves_the_routine_as_it_was_mended()
    {
        var changes = 0;
        Each(Cases / 2, (scene, broken, _, _) =>
        {
            var mended = Complete.Soon(Sketch.Of(broken), scene.Book, 30_000)!;
            var made = new Mending(scene, broken, mended).Changes().ToList();
            changes += made.Count;
            Assert.Equal(mended.Routine.Moves.Select(Plain), made[^1].Routine.Moves.Select(Plain));
            Assert.Equal(mended.Routine.Placements, made[^1].Routine.Placements);
            Assert.True(Audit.Of(scene, made[^1].Routine).IsClean);
            Assert.All(made, c => Assert.Equal(c.Routine.Moves.Count, c.Written.Count));
            Assert.All(made, c => Assert.Equal(c.Written.Where(w => w > 0).Order().Distinct(), c.Written.Where(w => w > 0)));
            Assert.All(made, c => Assert.NotEmpty(c.Told));
        });
        Assert.True(changes > Cases / 2, $"{changes} changes");
    }

    private static (int?, string?, string?, string?, HalfCounts, HalfCounts, Bearing?) Plain(Move move) =>
        (move.Attacker, move.Attack, move.Technique, move.Reaction, move.Start, move.Linger, move.From);

    private static void Each(int cases, Action<Scene, Routine, int, Verdict> check)
    {
        var tried = 0;
        for (var i = 0; i < cases; i++)
        {
            if (Drafts.OfSmall(i / 3).Routine is not { } routine)
            {
                continue;
            }

            var broken = Planted.In(routine, Drafts.Book, 1 + (i % 3), i);
            var scene = new Scene(broken.Brief, Drafts.Book);
            check(scene, broken, 1 + (i % 3), Audit.Of(scene, broken));
            tried++;
        }

        Assert.True(tried >= cases * 3 / 4, $"{tried} of {cases}");
    }
}
