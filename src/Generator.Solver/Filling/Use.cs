using Generator.Domain;

namespace Generator.Solver.Filling;

/// <summary>One technique in one kind of use: the solver's one-hot choice of a row.</summary>
/// <param name="Kind">What it is used for.</param>
/// <param name="Index">Position of the technique in the book; −1 for an idle row.</param>
/// <param name="Technique">The technique; null for an idle row.</param>
/// <param name="Attacks">Positions of the attacks that the row may carry; empty when it carries none.</param>
/// <param name="Grip">For an escape from a grab of the same row: that grab's effect on the hero, from one of its attacks.</param>
public sealed record Use(UseKind Kind, int Index, Technique? Technique, IReadOnlyList<int> Attacks, Attack? Grip)
{
    public static readonly Use IdleRow = new(UseKind.Idle, -1, null, [], null);

    public bool HasTarget => Kind > UseKind.NoTarget;

    /// <summary>The row carries an attack.</summary>
    public bool CarriesAttack => Attacks.Count > 0;
}
