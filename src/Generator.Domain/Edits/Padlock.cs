namespace Generator.Domain.Edits;

/// <summary>What is said in cells must not give, or may again.</summary>
/// <param name="First">First move.</param>
/// <param name="Last">Last move.</param>
/// <param name="Only">The cell: attack, technique or reaction; null for all three.</param>
/// <param name="IsLocked">Whether it must stay.</param>
public sealed record Padlock(int First, int Last, Column? Only, bool IsLocked) : Edit
{
    /// <summary>Only moves of this attacker; null for everybody's.</summary>
    public (int Attacker, string Name)? Of { get; init; }

    public override string Name => $"{(IsLocked ? "lock" : "unlock")} {(Only is { } column ? column.ToString().ToLowerInvariant() + " of " : string.Empty)}{(Of is { } who ? "all that " + who.Name + " is in" : Stretch(First, Last))}";

    internal override int Needs => Last + 1;

    internal override int Starts => First;
}
