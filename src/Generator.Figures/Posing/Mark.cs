using Generator.Figures.Bodies;

namespace Generator.Figures.Posing;

/// <summary>A place in a picture to which the eye should go.</summary>
/// <param name="At">Metres.</param>
/// <param name="Kind">What happens there.</param>
public readonly record struct Mark(Vec At, MarkKind Kind)
{
    public Mark Mirrored => new(At.Mirrored, Kind);
}
