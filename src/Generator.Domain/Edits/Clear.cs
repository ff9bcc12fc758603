namespace Generator.Domain.Edits;

/// <summary>Leaves open what moves say of attack, technique and reaction; who attacks when stays, and so does what is locked.</summary>
public sealed record Clear(int First, int Last) : Edit
{
    public override string Name => $"leave {Stretch(First, Last)} open";

    internal override int Needs => Last + 1;

    internal override int Starts => First;
}
