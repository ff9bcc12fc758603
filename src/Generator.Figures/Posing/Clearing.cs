using Generator.Figures.Bodies;
using Generator.Figures.Poses;

namespace Generator.Figures.Posing;

/// <summary>Keeps trunks and heads of two bodies out of each other in a blow: whoever strikes makes room, bends where that is not enough, and reaches from there. Holds and throws are posed by hand and stay as they are.</summary>
internal static class Clearing
{
    /// <summary>Clothes and flesh give so much; metres (common practice, no source).</summary>
    internal const double Gives = 0.04;

    /// <summary>Farthest that somebody makes room, half a step; metres (common practice, no source).</summary>
    private const double Most = 0.30;

    /// <summary>Whoever is as high over the floor goes over the other one and makes room upwards; share of stature.</summary>
    private const double Aloft = 0.40;

    /// <summary>Farthest that they then go up; metres (common practice, no source).</summary>
    private const double Highest = 0.60;

    /// <summary>So near to where it is aimed, something is there; metres.</summary>
    internal const double Near = 0.02;

    /// <summary>Nearer than this nothing is meant to miss; centimetres.</summary>
    private const int Laid = 3;

    /// <summary>A way of bending is only better than a lesser one by more than this; metres.</summary>
    private const double Slight = 0.005;

    private static readonly (Joint From, Joint To, double Radius)[] Trunk =
        [(Joint.Hips, Joint.Chest, 0.064), (Joint.Chest, Joint.Neck, 0.056), (Joint.Head, Joint.Crown, 0.042)];

    /// <summary>The body aimed, out of the other one, and how far the first thing aimed stays short; metres.</summary>
    /// <param name="figure">As posed.</param>
    /// <param name="other">Whom it is aimed at.</param>
    /// <param name="aims">What.</param>
    /// <param name="stays">It stays between two if it can, and does not come nearer to this one.</param>
    public static (Figure Figure, double Missing) Of(Figure figure, Figure other, IReadOnlyList<Aim> aims, bool stays = false)
    {
        if (aims.Count == 0 || aims[0].Gap is null)
        {
            return Aiming.At(figure, other, aims);
        }

        var best = Apart(figure, stays);
        if (stays && best.Wrong > 0)
        {
            best = Apart(figure);
        }

        foreach (var bent in best.Wrong > 0 ? Leaning.Ways(figure, (other[Joint.Hips] - figure[Joint.Hips]).Level.Unit) : [])
        {
            var tried = Apart(bent);
            if (tried.Wrong < best.Wrong - Slight)
            {
                best = tried;
            }

            if (best.Wrong <= 0)
            {
                break;
            }
        }

        return (best.Figure, best.Missing);

        (Figure Figure, double Missing, double Wrong) Apart(Figure body, bool still = false)
        {
            var (aimed, missing) = still ? Aiming.Limbs(body, other, aims) : Aiming.At(body, other, aims);
            var (away, most) = body.Lowest > Aloft * body.Stature ? (Vec.Up, Highest) : ((other[Joint.Hips] - body[Joint.Hips]).Level.Unit * -1, Most);
            var (depth, off) = (Depth(aimed, other), Inside(aimed, other, aims[0]));
            for (var room = 0.0; room < most && (depth > Gives || off > Near); (depth, off) = (Depth(aimed, other), Inside(aimed, other, aims[0])))
            {
                var back = Math.Min(Math.Max(depth, off), most - room);
                (aimed, missing) = Aiming.Limbs(aimed.Moved(away * back), other, aims);
                room += back;
            }

            return (aimed, missing, Wrong(aimed, other, aims));
        }
    }

    /// <summary>By how much a body is still too far from what it is to touch, too near to what it is to miss, or too deep in the other one; metres, 0 or below where nothing is wrong.</summary>
    internal static double Wrong(Figure figure, Figure other, IReadOnlyList<Aim> aims) =>
        Math.Max(
            Depth(figure, other) - Gives,
            aims.Select(a => a.Gap switch { null => 0, 0 => Math.Abs(Aiming.Apart(figure, other, a)), _ => Inside(figure, other, a) }).DefaultIfEmpty(0).Max() - Near);

    /// <summary>By how much a planned miss is nearer than planned. It may be farther off, and what is told of it is the true gap; a hand's thickness or less is no miss but a hand that lies on something.</summary>
    private static double Inside(Figure figure, Figure other, Aim aim) => aim.Gap is int gap and > Laid ? (gap / 100.0) - Aiming.Apart(figure, other, aim) : 0;

    /// <summary>How deep trunks and heads are inside each other, below 0 apart; metres.</summary>
    internal static double Depth(Figure one, Figure other) =>
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
