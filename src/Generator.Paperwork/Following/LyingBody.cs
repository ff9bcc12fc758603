using Generator.Rules.Bodies;

namespace Generator.Paperwork.Following;

/// <summary>Somebody on the floor.</summary>
/// <param name="From">First moment, in half counts, at which they are down.</param>
/// <param name="To">Moment at which they are up again; infinite for good.</param>
/// <param name="Feet">End of the body's axis, half its width from the soles.</param>
/// <param name="Head">The other end, half its width from the crown.</param>
public readonly record struct LyingBody(double From, double To, Place Feet, Place Head);
