using Generator.Rules.Bodies;

namespace Generator.Paperwork.Following;

/// <summary>Where a performer is at a moment in half counts; between two of them they move evenly on a straight line.</summary>
public readonly record struct Keyframe(double Time, Place Place);
