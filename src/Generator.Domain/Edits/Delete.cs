namespace Generator.Domain.Edits;

/// <summary>Takes moves out.</summary>
public sealed record Delete(int First, int Last) : Edit
{
    public override string Name => $"take out {Stretch(First, Last)}";

    internal override int Needs => Last + 1;

    internal override int Starts => First;
}
