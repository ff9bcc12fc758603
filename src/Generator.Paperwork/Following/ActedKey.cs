using Generator.Figures.Bodies;
using Body = Generator.Figures.Bodies.Figure;

namespace Generator.Paperwork.Following;

/// <summary>A body at a moment: metres from the hero's mark, X towards 3 o'clock, Y up, Z towards 6.</summary>
/// <param name="Time">Half counts from count 1.</param>
/// <param name="Body">Where its joints are.</param>
public sealed record ActedKey(double Time, Body Body)
{
    /// <summary>How every joint is turned against its parent.</summary>
    public IReadOnlyList<Rotation> Rotations { get; } = Rig.Of(Body);
}
