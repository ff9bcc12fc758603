using Generator.Domain;
using Generator.Domain.Sketches;
using Generator.Rules.Judging;

namespace Generator.Solver.Completing;

/// <summary>A sketch filled in.</summary>
/// <param name="Sketch">What was said.</param>
/// <param name="Routine">The routine; the audit finds nothing unsafe or broken in it.</param>
/// <param name="Verdict">What the audit says of it.</param>
/// <param name="Gave">What had to give, in the order of the sketch.</param>
/// <param name="Rows">For each move of the sketch the row of the routine, from 0; −1 for a gap or a move that was left out.</param>
public sealed record Completed(Sketch Sketch, Routine Routine, Verdict Verdict, IReadOnlyList<Departure> Gave, IReadOnlyList<int> Rows)
{
    /// <summary>Moves of the sketch, gaps apart.</summary>
    public int Said => Sketch.Moves.Count(m => !m.IsGap);

    /// <summary>Those of which nothing gave.</summary>
    public int Stands => Said - Gave.Where(g => g.Part is not SketchPart.Added).Select(g => g.Move).Distinct().Count();

    /// <summary>Rows of attacks that were written on one line with their answer and take a row of their own, such as a grab and what frees the hero from it; from 0.</summary>
    public IReadOnlyList<int> Opened => [.. Rows.Where((r, m) => r > 0 && !Rows.Contains(r - 1) && Sketch.Moves[m].Attack is not null
        && Routine.Moves[r].Attack is null && Routine.Moves[r - 1] is { Attack: not null } before && before.Attacker == Routine.Moves[r].Attacker).Select(r => r - 1)];

    /// <summary>Price of all that gave; see <see cref="Departure.Price"/>.</summary>
    public long Price => Gave.Sum(g => g.Price);
}
