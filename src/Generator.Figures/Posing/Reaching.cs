using Generator.Domain;
using Generator.Figures.Bodies;

namespace Generator.Figures.Posing;

/// <summary>Two-bone inverse kinematics by the law of cosines: the middle joint stays on the side on which it bends.</summary>
public static class Reaching
{
    /// <summary>A limb is never quite straight; share of its length.</summary>
    public const double Straightest = 0.985;

    /// <summary>The middle joint of a limb whose end is to be at <paramref name="end"/>, and where the end gets.</summary>
    /// <param name="root">Shoulder or hip.</param>
    /// <param name="pole">A point on the side to which the middle joint goes.</param>
    /// <param name="end">Where wrist or ankle is wanted.</param>
    /// <param name="upper">Length of the bone at the root.</param>
    /// <param name="lower">Length of the other bone.</param>
    public static (Vec Middle, Vec End) TwoBones(Vec root, Vec pole, Vec end, double upper, double lower)
    {
        var way = (end - root).Unit;
        var distance = Math.Clamp((end - root).Length, Math.Abs(upper - lower) + (0.05 * (upper + lower)), (upper + lower) * Straightest);
        var along = ((upper * upper) - (lower * lower) + (distance * distance)) / (2 * distance);
        var beside = (pole - root).Beside(way).Unit;
        if (beside == default)
        {
            beside = Vec.Up.Beside(way).Unit;
        }

        return (root + (way * along) + (beside * Math.Sqrt(Math.Max(0, (upper * upper) - (along * along)))), root + (way * distance));
    }

    /// <summary>A foot elsewhere; it keeps its own direction.</summary>
    internal static Figure Ankle(Figure figure, Side side, Vec at)
    {
        var (hip, knee, ankle, ball) = Skeleton.Leg(side);
        var (middle, end) = TwoBones(figure[hip], Pole(figure, hip, knee, ankle, figure.HipsTurned.Ahead), at, Skeleton.Thigh * figure.Stature, Skeleton.Shank * figure.Stature);
        return figure.With((knee, middle), (ankle, end), (ball, end + (figure[ball] - figure[ankle])));
    }

    /// <summary>A hand elsewhere, and how far it stays short of that.</summary>
    internal static (Figure Figure, double Missing) Hand(Figure figure, Side side, Vec at)
    {
        var (shoulder, elbow, wrist, hand) = Skeleton.Arm(side);
        var length = figure[wrist].To(figure[hand]);
        var way = (at - figure[shoulder]).Unit;
        var (middle, end) = TwoBones(
            figure[shoulder], Pole(figure, shoulder, elbow, wrist, figure.ChestTurned.Up * -1), at - (way * length), Skeleton.UpperArm * figure.Stature, Skeleton.Forearm * figure.Stature);
        var tip = end + ((at - end).Unit is var straight && straight != default ? straight * length : way * length);
        return (figure.With((elbow, middle), (wrist, end), (hand, tip)), tip.To(at));
    }

    /// <summary>A foot that kicks, its toes, sole or shin at a point, and how far it stays short.</summary>
    internal static (Figure Figure, double Missing) Foot(Figure figure, Side side, Vec at)
    {
        var (_, _, ankle, ball) = Skeleton.Leg(side);
        var foot = figure[ball] - figure[ankle];
        var least = Math.Max(Skeleton.Thickness(ankle), Skeleton.ToeHeight - (foot.Y / figure.Stature)) * figure.Stature;

        // With the leg bent otherwise, another point of the foot may be what meets.
        var (moved, missing) = (figure, double.MaxValue);
        for (var (tries, ahead) = (0, FootAhead(figure, side)); tries < 8 && missing > 0.001; tries++)
        {
            var wanted = at - (foot * ahead);
            var tried = Ankle(figure, side, wanted with { Y = Math.Max(wanted.Y, least) });
            ahead = (ahead + FootAhead(tried, side)) / 2;
            if (FootPoint(tried, side).To(at) is var off && off < missing)
            {
                (moved, missing) = (tried, off);
            }
        }

        return (moved, missing);
    }

    /// <summary>An elbow or a knee at a point: the whole limb turns about its root. How far it stays short.</summary>
    internal static (Figure Figure, double Missing) Middle(Figure figure, (Joint Root, Joint Middle, Joint End, Joint Tip) limb, Vec at)
    {
        var root = figure[limb.Root];
        var (before, after) = ((figure[limb.Middle] - root).Unit, (at - root).Unit);
        var axis = before.Cross(after);
        Vec Turn(Joint joint)
        {
            // Rodrigues' formula; axis is as long as the sine of the angle.
            var way = figure[joint] - root;
            var cos = before.Dot(after);
            return root + (way * cos) + axis.Cross(way) + (axis * (axis.Dot(way) / (1 + Math.Max(cos, -0.99))));
        }

        var moved = figure.With((limb.Middle, Turn(limb.Middle)), (limb.End, Turn(limb.End)), (limb.Tip, Turn(limb.Tip)));
        return (moved, moved[limb.Middle].To(at));
    }

    /// <summary>The point of a foot that meets something: the sole where it faces it, else the instep.</summary>
    internal static Vec FootPoint(Figure figure, Side side)
    {
        var (_, _, ankle, ball) = Skeleton.Leg(side);
        return figure[ankle] + ((figure[ball] - figure[ankle]) * FootAhead(figure, side));
    }

    /// <summary>A pointed foot meets with its middle, one at a right angle with its sole, and in between as much as it is pointed.</summary>
    private static double FootAhead(Figure figure, Side side)
    {
        var (_, knee, ankle, ball) = Skeleton.Leg(side);
        var pointed = (figure[ball] - figure[ankle]).Unit.Dot((figure[ankle] - figure[knee]).Unit);
        return 0.2 + (0.3 * Math.Clamp((pointed - 0.3) / 0.4, 0, 1));
    }

    private static Vec Pole(Figure figure, Joint root, Joint middle, Joint end, Vec otherwise)
    {
        var beside = (figure[middle] - figure[root]).Beside((figure[end] - figure[root]).Unit);
        return figure[root] + (beside.Length > 0.001 * figure.Stature ? beside : otherwise);
    }
}
