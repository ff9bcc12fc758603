using Generator.Domain.Sketches;

namespace Generator.Domain.Edits;

/// <summary>Takes over what somebody offers in place of all moves, such as a sketch filled in.</summary>
/// <param name="What">The offer, to stand behind "Undo:".</param>
/// <param name="Moves">All moves from now on.</param>
/// <param name="Placements">All opening places from now on.</param>
public sealed record Take(string What, IReadOnlyList<SketchMove> Moves, IReadOnlyList<Placement?> Placements) : Edit
{
    public override string Name => What;

    internal override int Needs => 0;
}
