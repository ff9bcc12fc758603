using Generator.Domain;

namespace Generator.Rules.Memories;

/// <summary>What momentum remembers.</summary>
/// <param name="Links">Neighbours in one exchange so far that are both hits of the hero.</param>
/// <param name="Alike">Those of them with one limb.</param>
/// <param name="Neighbours">Neighbours in one exchange so far, both with a target.</param>
/// <param name="Against">Those of them that turn one way and back.</param>
/// <param name="HasTarget">The last move has a target.</param>
/// <param name="Throws">It is a hit.</param>
/// <param name="Limb">With this limb.</param>
/// <param name="Way">The way that the hero turned in it: 1 clockwise, −1 the other way, 0 neither.</param>
public sealed record MomentumMemory(int Links, int Alike, int Neighbours, int Against, bool HasTarget, bool Throws, BodyParts Limb, int Way)
{
    public static readonly MomentumMemory None = new(0, 0, 0, 0, false, false, BodyParts.None, 0);
}
