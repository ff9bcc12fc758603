namespace Generator.Domain.Edits;

/// <summary>A move and the one behind it change places; the counts stay where they are.</summary>
public sealed record Swap(int First) : Edit
{
    public override string Name => FormattableString.Invariant($"swap moves {First + 1} and {First + 2}");

    internal override int Needs => First + 2;

    internal override int Starts => First;
}
