using Generator.Figures.Bodies;

namespace Generator.Figures.Painting;

/// <summary>A part of a body as it is drawn: a capsule between two points.</summary>
/// <param name="From">One end.</param>
/// <param name="To">The other.</param>
/// <param name="FromRadius">Metres.</param>
/// <param name="ToRadius">Metres.</param>
/// <param name="Banded">Has the bands of a left limb.</param>
/// <param name="Bone">The joint with which it turns.</param>
public readonly record struct Capsule(Vec From, Vec To, double FromRadius, double ToRadius, bool Banded, Joint Bone);
