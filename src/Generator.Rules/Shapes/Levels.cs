using Generator.Domain;
using Generator.Rules.Replaying;

namespace Generator.Rules.Shapes;

/// <summary>At which heights the hero's hits land, and with which side they are thrown.</summary>
/// <param name="Low">Hits at knee height and below.</param>
/// <param name="Middle">Hits on the body.</param>
/// <param name="High">Hits at head height.</param>
/// <param name="Left">Hits with a left limb.</param>
/// <param name="Right">Hits with a right one.</param>
public readonly record struct Levels(int Low, int Middle, int High, int Left, int Right)
{
    public static Levels Of(IReadOnlyList<Step> steps)
    {
        var hits = steps.Where(s => s.Throws).Select(s => s.Technique!).ToList();
        return new Levels(
            hits.Count(t => t.Height == Height.Low),
            hits.Count(t => t.Height == Height.Middle),
            hits.Count(t => t.Height == Height.High),
            hits.Count(t => t.Side == Side.Left),
            hits.Count(t => t.Side == Side.Right));
    }
}
