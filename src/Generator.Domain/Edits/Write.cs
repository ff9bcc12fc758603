using Generator.Domain.Sketches;

namespace Generator.Domain.Edits;

/// <summary>Writes one cell; nothing leaves it open.</summary>
/// <param name="At">The move.</param>
/// <param name="Column">Which cell.</param>
/// <param name="Said">A move that says in this cell what is to stand there; its other cells do not matter.</param>
public sealed record Write(int At, Column Column, SketchMove Said) : Edit
{
    public override string Name => $"{Column.ToString().ToLowerInvariant()} of {Numbered(At)}";

    internal override int Needs => At + 1;

    internal override int Starts => At;
}
