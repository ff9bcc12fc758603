using Generator.Domain;
using Generator.Figures.Bodies;
using Generator.Figures.Poses;

namespace Generator.Figures.Posing;

/// <summary>
/// Body first, limb last: the hips shift along the line so that the limb gets there as it is posed, bent or stretched; the limb makes up the rest; what is
/// missing then is the true gap.
/// </summary>
public static class Aiming
{
    /// <summary>Farthest that the hips shift; metres (common practice, no source).</summary>
    public const double Shift = 0.20;

    /// <summary>Whoever meets with head or shoulder has no limb to reach with, and whoever swings or thrusts something goes with it: both come in with a step of so much at most; metres (common practice, no source).</summary>
    private const double Step = 0.60;

    /// <summary>The body with everything aimed, and how far the first stays short; metres.</summary>
    public static (Figure Figure, double Missing) At(Figure figure, Figure other, IReadOnlyList<Aim> aims)
    {
        if (aims.Count == 0)
        {
            return (figure, 0);
        }

        var line = (other[Joint.Hips] - figure[Joint.Hips]).Level.Unit;
        if (line == default)
        {
            line = Vec.Ahead;
        }

        var steps = aims[0].Part is Part.Head or Part.Shoulder || aims[0].Longer > 0;
        var most = steps ? Step : Shift;
        var way = line * Math.Clamp((Place(figure, other, aims[0]) - PointOf(figure, aims[0].Part)).Dot(line), -most, most);
        return Limbs(steps ? figure.Moved(way) : Shifted(figure, way), other, aims);
    }

    /// <summary>The same without a shift of the hips.</summary>
    internal static (Figure Figure, double Missing) Limbs(Figure figure, Figure other, IReadOnlyList<Aim> aims)
    {
        var missing = 0.0;
        for (var i = 0; i < aims.Count; i++)
        {
            (figure, var shortBy) = Limb(figure, aims[i], Place(figure, other, aims[i]));
            missing = i == 0 ? shortBy : missing;
        }

        return (figure, missing);
    }

    /// <summary>Where what is aimed gets to, as a picture marks it.</summary>
    public static IEnumerable<Mark> Marks(Figure figure, Figure other, IReadOnlyList<Aim> aims) =>
        aims.Select(a => new Mark(Meets(figure, other, a), a switch { { Gap: null } or { Grips: true } => MarkKind.Grip, { Gap: 0 } => MarkKind.Touch, _ => MarkKind.Miss }));

    /// <summary>Where its skin is: a shoulder is a hand's breadth and more from the root of the neck, from which it is measured.</summary>
    private static Vec Meets(Figure figure, Figure other, Aim aim) => EndOf(figure, other, aim) is var end && aim.Part == Part.Shoulder ? end + ((Middle(other, aim.At).Middle - end).Unit * OwnRadius(figure, aim.Part)) : end;

    /// <summary>How far the first planned miss is off; null for none.</summary>
    internal static double? Gap(Figure? figure, Figure? other, IReadOnlyList<Aim>? aims) =>
        figure is not null && other is not null && aims is not null && aims.FirstOrDefault(a => a.Gap > 0) is { Gap: > 0 } aim ? Apart(figure, other, aim) : null;

    /// <summary>From the skin of the part to the skin of what it is aimed at; below 0 inside it. Metres.</summary>
    public static double Apart(Figure figure, Figure other, Aim aim)
    {
        var (middle, radius) = Middle(other, aim.At);
        return EndOf(figure, other, aim).To(middle) - radius - (aim.Longer > 0 ? 0 : OwnRadius(figure, aim.Part));
    }

    /// <summary>Where what is aimed ends now: the part itself, or the far end of what is in the hand, which points at what it is aimed at.</summary>
    public static Vec EndOf(Figure figure, Figure other, Aim aim)
    {
        var part = PointOf(figure, aim.Part);
        return aim.Longer > 0 ? part + ((Middle(other, aim.At).Middle - part).Unit * aim.Longer) : part;
    }

    /// <summary>The middle of what is aimed at, and half its thickness; metres.</summary>
    public static (Vec Middle, double Radius) Middle(Figure body, Target at)
    {
        Vec Between(Joint a, Joint b, double share) => body[a] + ((body[b] - body[a]) * share);
        double Thick(Joint joint) => Skeleton.Thickness(joint) * body.Stature;
        var back = body.ChestTurned.Ahead * -(Skeleton.Thickness(Joint.Chest) * body.Stature);
        return at switch
        {
            Target.Head => (body.HeadCentre, Skeleton.Face * body.Stature),
            Target.Chin => (body[Joint.Head] + (body.HeadTurned.Ahead * (0.03 * body.Stature)), 0.02 * body.Stature),
            Target.Nape => (Between(Joint.Neck, Joint.Head, 0.6), Thick(Joint.Neck)),
            Target.Shoulders => (body[Joint.Neck], Thick(Joint.Neck)),
            Target.Chest => (body[Joint.Chest], Thick(Joint.Chest)),
            Target.Belly => (body[Joint.Waist], Thick(Joint.Waist)),
            Target.Hips => (body[Joint.Hips], Thick(Joint.Hips)),
            Target.Back => (body[Joint.Chest] + back, 0),
            Target.Loins => (body[Joint.Waist] + back, 0),
            Target.LeftSide => (body[Joint.Waist] + (body.ChestTurned.Left * Thick(Joint.Waist)), 0.01),
            Target.RightSide => (body[Joint.Waist] - (body.ChestTurned.Left * Thick(Joint.Waist)), 0.01),
            Target.LeftThigh => (Between(Joint.LeftHip, Joint.LeftKnee, 0.65), Thick(Joint.LeftKnee)),
            Target.RightThigh => (Between(Joint.RightHip, Joint.RightKnee, 0.65), Thick(Joint.RightKnee)),
            _ when Enum.Parse<Joint>(at.ToString()) is var joint => (body[joint], Thick(joint)),
            _ => throw new ArgumentOutOfRangeException(nameof(at)),
        };
    }

    /// <summary>Where the part is now.</summary>
    public static Vec PointOf(Figure figure, Part part) => part switch
    {
        Part.LeftFoot => Reaching.FootPoint(figure, Side.Left),
        Part.RightFoot => Reaching.FootPoint(figure, Side.Right),
        Part.Head => figure.HeadCentre + (figure.HeadTurned.Ahead * (0.02 * figure.Stature)),
        Part.Shoulder => figure[Joint.Neck],
        _ => figure[Enum.Parse<Joint>(part.ToString())],
    };

    /// <summary>Where a part is to go: the near side of its target, so much before it.</summary>
    private static Vec Place(Figure figure, Figure other, Aim aim)
    {
        var (middle, radius) = Middle(other, aim.At);
        return aim.Gap is { } gap ? middle + ((PointOf(figure, aim.Part) - middle).Unit * (radius + (gap / 100.0) + (aim.Longer > 0 ? aim.Longer : OwnRadius(figure, aim.Part)))) : middle;
    }

    private static double OwnRadius(Figure figure, Part part) => figure.Stature * part switch
    {
        Part.LeftHand or Part.RightHand => Skeleton.Thickness(Joint.LeftHand),
        Part.LeftElbow or Part.RightElbow => Skeleton.Thickness(Joint.LeftElbow),
        Part.LeftKnee or Part.RightKnee => Skeleton.Thickness(Joint.LeftKnee),
        Part.Head => Skeleton.HeadHalfBreadth,
        Part.Shoulder => Skeleton.ShoulderAside,
        _ => Skeleton.Ankle,
    };

    private static (Figure Figure, double Missing) Limb(Figure figure, Aim aim, Vec place) => aim.Part switch
    {
        Part.LeftHand or Part.RightHand => Reaching.Hand(figure, aim.Side!.Value, place),
        Part.LeftFoot or Part.RightFoot => Reaching.Foot(figure, aim.Side!.Value, place),
        Part.LeftElbow or Part.RightElbow => Reaching.Middle(figure, Skeleton.Arm(aim.Side!.Value), place),
        Part.LeftKnee or Part.RightKnee => Reaching.Middle(figure, Skeleton.Leg(aim.Side!.Value), place),
        _ => (figure, PointOf(figure, aim.Part).To(place)),
    };

    /// <summary>The body moves, feet that stand stay.</summary>
    internal static Figure Shifted(Figure figure, Vec way)
    {
        var moved = figure.Moved(way);
        foreach (var side in Enum.GetValues<Side>())
        {
            var ankle = Skeleton.Leg(side).End;
            if (figure[ankle].Y < 0.06 * figure.Stature)
            {
                moved = Reaching.Ankle(moved, side, figure[ankle]);
            }
        }

        return moved;
    }
}
