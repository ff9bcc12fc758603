using Generator.Figures.Bodies;
using Generator.Figures.Poses;

namespace Generator.Figures.Posing;

/// <summary>Keeps trunks and heads of two bodies out of each other in a blow: whoever strikes makes room, and reaches from there. Holds and throws are posed by hand and stay as they are.</summary>
internal static class Clearing
{
    /// <summary>Clothes and flesh give so much; metres (common practice, no source).</summary>
    private const double Gives = 0.04;

    /// <summary>Farthest that somebody makes room, half a step; metres (common practice, no source).</summary>
    private const double Most = 0.30;

    private static readonly (Joint From, Joint To, double Radius)[] Trunk =
        [(Joint.Hips, Joint.Chest, 0.064), (Joint.Chest, Joint.Neck, 0.056), (Joint.Head, Joint.Crown, 0.042)];

    /// <summary>The body aimed, out of the other one, and how far the first thing aimed stays short; metres.</summary>
    public static (Figure Figure, double Missing) Of(Figure figure, Figure other, IReadOnlyList<Aim> aims)
    {
        var (aimed, missing) = Aiming.At(figure, other, aims);
        if (aims.Count == 0 || aims[0].Gap is null)
        {
            return (aimed, missing);
        }

        var line = (other[Joint.Hips] - figure[Joint.Hips]).Level.Unit;
        for (var room = 0.0; Depth(aimed, other) is var depth && depth > Gives && room < Most; room += depth)
        {
            (aimed, missing) = Aiming.Limbs(aimed.Moved(line * -Math.Min(depth, Most - room)), other, aims);
        }

        return (aimed, missing);
    }

    /// <summary>How deep trunks and heads are inside each other, below 0 apart; metres.</summary>
    private static double Depth(Figure one, Figure other) =>
        (from a in Trunk from b in Trunk select (a.Radius * one.Stature) + (b.Radius * other.Stature) - Apart(one[a.From], one[a.To], other[b.From], other[b.To])).Max();

    /// <summary>Between two lines, found by going to and fro between their nearest points.</summary>
    private static double Apart(Vec a, Vec b, Vec c, Vec d)
    {
        var (on, other) = ((a + b) * 0.5, (c + d) * 0.5);
        for (var i = 0; i < 8; i++)
        {
            (on, other) = (Nearest(a, b, other), Nearest(c, d, on));
        }

        return on.To(other);
    }

    private static Vec Nearest(Vec from, Vec to, Vec point)
    {
        var way = to - from;
        return from + (way * Math.Clamp((point - from).Dot(way) / way.Dot(way), 0, 1));
    }
}
