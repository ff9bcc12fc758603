namespace Generator.Solver.Repertoires;

/// <summary>Something that could be done with one attacker: positions in the book, −1 where there is none.</summary>
/// <param name="Attack">What the attacker throws.</param>
/// <param name="Technique">What the hero does.</param>
/// <param name="Reactions">How the attacker can sell it in that situation; empty without a target.</param>
internal sealed record Choice(int Attack, int Technique, int[] Reactions)
{
    /// <summary>Of a travel move the mark to which it leads; −1 for what stays.</summary>
    public int To { get; init; } = -1;
}
