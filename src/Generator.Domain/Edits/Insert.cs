using Generator.Domain.Sketches;

namespace Generator.Domain.Edits;

/// <summary>Puts moves in.</summary>
/// <param name="Before">The move before which they stand; the number of moves for the end.</param>
/// <param name="New">The moves.</param>
public sealed record Insert(int Before, IReadOnlyList<SketchMove> New) : Edit
{
    public override string Name => $"put in {Stretch(Before, Before + Math.Max(1, New.Count) - 1)}";

    internal override int Needs => Before;

    internal override int Starts => Before;
}
