using Generator.Domain;

namespace Generator.Figures.Bodies;

/// <summary>
/// The skeleton as other programs know it: every joint hangs from a parent, and a body is where its hips are and how each joint is turned against its parent. At rest it
/// stands upright with the arms straight out to the sides, palms down.
/// </summary>
public static class Rig
{
    /// <summary>The joint from which another hangs; null for the hips. Ends hang from the last joint of their limb.</summary>
    public static Joint? Parent(Joint joint) => joint switch
    {
        Joint.Hips => null,
        Joint.Waist or Joint.LeftHip or Joint.RightHip => Joint.Hips,
        Joint.Chest => Joint.Waist,
        Joint.Neck or Joint.LeftShoulder or Joint.RightShoulder => Joint.Chest,
        Joint.Head => Joint.Neck,
        Joint.Crown => Joint.Head,
        Joint.LeftHand => Joint.LeftWrist,
        Joint.RightHand => Joint.RightWrist,
        _ => joint - 1,
    };

    /// <summary>From its parent to a joint at rest; shares of stature.</summary>
    public static Vec Offset(Joint joint)
    {
        var aside = Skeleton.Mirrored(joint) == joint ? 0 : joint.ToString().StartsWith("Left", StringComparison.Ordinal) ? 1 : -1;
        return joint switch
        {
            Joint.Hips => default,
            Joint.Waist => Vec.Up * Skeleton.LowerTrunk,
            Joint.Chest => Vec.Up * Skeleton.MiddleTrunk,
            Joint.Neck => Vec.Up * Skeleton.UpperTrunk,
            Joint.Head => Vec.Up * Skeleton.Neck,
            Joint.Crown => Vec.Up * Skeleton.Head,
            Joint.LeftShoulder or Joint.RightShoulder => new(Skeleton.ShoulderAside * aside, Skeleton.UpperTrunk, 0),
            Joint.LeftElbow or Joint.RightElbow => Vec.Left * (Skeleton.UpperArm * aside),
            Joint.LeftWrist or Joint.RightWrist => Vec.Left * (Skeleton.Forearm * aside),
            Joint.LeftHand or Joint.RightHand => Vec.Left * (Skeleton.Fist * aside),
            Joint.LeftHip or Joint.RightHip => Vec.Left * (Skeleton.HipAside * aside),
            Joint.LeftKnee or Joint.RightKnee => Vec.Up * -Skeleton.Thigh,
            Joint.LeftAnkle or Joint.RightAnkle => Vec.Up * -Skeleton.Shank,
            _ => new(0, Skeleton.ToeHeight - Skeleton.Ankle, Skeleton.Toes),
        };
    }

    /// <summary>A body at rest, one long, with the hips where they are when it stands.</summary>
    public static Figure AtRest { get; } = Resting();

    private static Figure Resting()
    {
        var points = new Vec[Skeleton.Points];
        foreach (var joint in Enum.GetValues<Joint>())
        {
            points[(int)joint] = Parent(joint) is { } parent ? points[(int)parent] + Offset(joint) : Vec.Up * Skeleton.HipHeight;
        }

        return new Figure(1, points, Turned.None, Turned.None, Turned.None, open: false);
    }

    /// <summary>How every joint of a body is turned against its parent, from the hips outwards.</summary>
    public static IReadOnlyList<Rotation> Of(Figure figure)
    {
        var turns = new Turned[Skeleton.Joints];
        turns[(int)Joint.Hips] = figure.HipsTurned;
        turns[(int)Joint.Waist] = Upwards(figure[Joint.Chest] - figure[Joint.Waist], figure.HipsTurned.Left + figure.ChestTurned.Left);
        turns[(int)Joint.Chest] = figure.ChestTurned;
        turns[(int)Joint.Neck] = Upwards(figure[Joint.Head] - figure[Joint.Neck], figure.ChestTurned.Left + figure.HeadTurned.Left);
        turns[(int)Joint.Head] = figure.HeadTurned;
        foreach (var side in Enum.GetValues<Side>())
        {
            Arm(figure, side, turns);
            Leg(figure, side, turns);
        }

        return [.. turns.Select((turn, i) => Rotation.Of(Parent((Joint)i) is { } parent ? turns[(int)parent].Inverse * turn : turn))];
    }

    /// <summary>How a joint is turned in space.</summary>
    /// <param name="rotations">As <see cref="Of"/> has them.</param>
    /// <param name="joint">No end.</param>
    public static Turned InSpace(IReadOnlyList<Rotation> rotations, Joint joint) =>
        Parent(joint) is { } parent ? InSpace(rotations, parent) * rotations[(int)joint].Turned : rotations[(int)joint].Turned;

    /// <summary>Where the joints are, ends left out; metres.</summary>
    /// <param name="hips">Where the hips are.</param>
    /// <param name="rotations">As <see cref="Of"/> has them.</param>
    /// <param name="stature">Metres.</param>
    public static IReadOnlyList<Vec> Joints(Vec hips, IReadOnlyList<Rotation> rotations, double stature)
    {
        var (places, turns) = (new Vec[Skeleton.Joints], new Turned[Skeleton.Joints]);
        for (var i = 0; i < Skeleton.Joints; i++)
        {
            var parent = Parent((Joint)i) is { } p ? (int)p : -1;
            places[i] = parent < 0 ? hips : places[parent] + (turns[parent] * Offset((Joint)i) * stature);
            turns[i] = parent < 0 ? rotations[i].Turned : turns[parent] * rotations[i].Turned;
        }

        return places;
    }

    private static Turned Upwards(Vec up, Vec left)
    {
        var y = up.Unit;
        var x = left.Beside(y).Unit;
        return new(x, y, x.Cross(y));
    }

    /// <summary>An arm lies along its own left or right, and its elbow turns about its own up.</summary>
    private static void Arm(Figure figure, Side side, Turned[] turns)
    {
        var (shoulder, elbow, wrist, hand) = Skeleton.Arm(side);
        var out_ = side == Side.Left ? 1 : -1;
        var (upper, fore, tip) = ((figure[elbow] - figure[shoulder]).Unit, (figure[wrist] - figure[elbow]).Unit, (figure[hand] - figure[wrist]).Unit);
        var hinge = fore.Cross(upper) * out_;
        hinge = hinge.Length > 1e-6 ? hinge.Unit : figure.ChestTurned.Up;
        turns[(int)shoulder] = Along(upper * out_, hinge);
        turns[(int)elbow] = Along(fore * out_, hinge);
        turns[(int)wrist] = Along(tip * out_, hinge);

        static Turned Along(Vec left, Vec up)
        {
            var y = up.Beside(left).Unit;
            return new(left, y, left.Cross(y));
        }
    }

    /// <summary>A leg hangs along its own down, and its knee turns about its own left.</summary>
    private static void Leg(Figure figure, Side side, Turned[] turns)
    {
        var (hip, knee, ankle, ball) = Skeleton.Leg(side);
        var (thigh, shank, foot) = ((figure[knee] - figure[hip]).Unit, (figure[ankle] - figure[knee]).Unit, (figure[ball] - figure[ankle]).Unit);
        var hinge = thigh.Cross(shank);
        hinge = hinge.Length > 1e-6 ? hinge.Unit : figure.HipsTurned.Left;
        turns[(int)hip] = Upwards(thigh * -1, hinge);
        turns[(int)knee] = Upwards(shank * -1, hinge);

        // A foot points ahead and a little down at rest.
        var rest = Offset(ball).Unit;
        var left = hinge.Beside(foot).Unit;
        var sole = left.Cross(foot);
        turns[(int)ankle] = new(left, (foot * rest.Y) - (sole * rest.Z), (foot * rest.Z) + (sole * rest.Y));
        turns[(int)ball] = turns[(int)ankle];
    }
}
