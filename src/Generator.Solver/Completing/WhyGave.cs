using Generator.Domain;
using Generator.Domain.Sketches;
using Generator.Rules;
using Generator.Rules.Judging;

namespace Generator.Solver.Completing;

/// <summary>Why something that was said could not stand: what the audit says of the routine with it put back.</summary>
public static class WhyGave
{
    /// <summary>Ways of putting it back that are looked at.</summary>
    private const int Most = 40;

    /// <summary>The gravest finding at or after the move when it is put back as it was said, in the way that offends least; null where the audit has nothing against it there.</summary>
    public static Finding? Of(Completed completed, Departure gave, Scene scene)
    {
        if (gave.Row < 0)
        {
            return null;
        }

        return PutBack(completed, gave, scene).Take(Most)
            .Select(r => Audit.Of(scene, r).Findings.Where(f => f.Severity >= Severity.Broken).ToList())
            .OrderBy(f => f.Count)
            .FirstOrDefault()?.OrderByDescending(f => f.Move == gave.Row + 1).ThenByDescending(f => f.Severity).FirstOrDefault();
    }

    private static IEnumerable<Routine> PutBack(Completed completed, Departure gave, Scene scene)
    {
        var moves = completed.Routine.Moves;
        if (gave.Part == SketchPart.Added)
        {
            return [completed.Routine with { Moves = [.. moves.Where((_, i) => i != gave.Row)] }];
        }

        var said = completed.Sketch.Moves[gave.Move];
        var move = moves[gave.Row];
        var choices = new MoveChoices(scene, said).Said.Select(s => s.Choice);
        return choices.Select(c => completed.Routine with
        {
            Moves = [.. moves.Select((m, i) => i != gave.Row ? m : move with
            {
                Attacker = said.Attacker ?? move.Attacker,
                Attack = c.Attack < 0 ? null : scene.Book.Attacks[c.Attack].Id,
                Technique = scene.Book.Techniques[c.Technique].Id,
                Reaction = c.Reaction < 0 ? null : scene.Book.Reactions[c.Reaction].Id,
                Start = said.Count is { } count && gave.Part == SketchPart.Count ? count.First : move.Start,
                Stance = null,
            })],
        });
    }
}
