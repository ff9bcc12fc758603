namespace Generator.Domain.Edits;

/// <summary>A move and everything behind it starts sooner or later.</summary>
/// <param name="From">The first move.</param>
/// <param name="By">Half counts later; sooner below 0. No move starts before count 1.</param>
public sealed record Shift(int From, int By) : Edit
{
    public override string Name => $"{(By < 0 ? "sooner" : "later")} from {Numbered(From)} on";

    internal override int Needs => From + 1;

    internal override int Starts => From;
}
