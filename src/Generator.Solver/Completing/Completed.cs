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
    /// <summary>It is proven that no routine gives up less.</summary>
    public bool IsLeast { get => field || Price == 0; init; }

    /// <summary>Moves of the sketch, gaps apart.</summary>
    public int Said => Sketch.Moves.Count(m => !m.IsGap);

    /// <summary>Those of which nothing gave.</summary>
    public int Stands => Said - Gave.Where(g => g.Part is not SketchPart.Added).Select(g => g.Move).Distinct().Count();

    /// <summary>No technique and no attack gave, and no move was left out: what is done is what was said.</summary>
    public bool Keeps => Gave.All(g => g.Part is not (SketchPart.Technique or SketchPart.Attack) && g.Row >= 0);

    /// <summary>Attacks that were written on one line with their answer and take a row of their own, such as a grab and what frees the hero from it: the move of the sketch and the row of the attack, both from 0.</summary>
    public IReadOnlyList<(int Move, int Row)> Opened => [.. Rows.Select((r, m) => (Move: m, Row: r - 1)).Where(o => o.Row >= 0 && !Rows.Contains(o.Row) && Sketch.Moves[o.Move].Attack is not null
        && Routine.Moves[o.Row + 1].Attack is null && Routine.Moves[o.Row] is { Attack: not null } before && before.Attacker == Routine.Moves[o.Row + 1].Attacker)];

    /// <summary>Price of all that gave; see <see cref="Departure.Price"/>.</summary>
    public long Price => Gave.Sum(g => g.Price);
}
