using Generator.Domain.Sketches;

namespace Generator.Domain.Edits;

/// <summary>Takes over what somebody offers in place of the whole fight, such as a sketch filled in.</summary>
/// <param name="What">The offer, to stand behind "Undo:".</param>
/// <param name="After">The fight from now on.</param>
public sealed record Take(string What, Sketch After) : Edit
{
    public override string Name => What;
}
