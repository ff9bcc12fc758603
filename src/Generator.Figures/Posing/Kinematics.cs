using Generator.Domain;
using Generator.Figures.Bodies;
using Generator.Figures.Poses;

namespace Generator.Figures.Posing;

/// <summary>Where the joints are when a body of a stature holds itself in a pose, standing or lying on the floor, the hips over the mark.</summary>
public static class Kinematics
{
    /// <summary>The trunk bends at waist and chest, the neck below and above; shares of either (no source).</summary>
    private const double AtWaist = 0.4;

    private const double AtNeck = 0.5;

    /// <summary>A foot that is this near to the floor is meant to stand on it; share of stature.</summary>
    private const double Planted = 0.12;

    /// <param name="pose">What is posed.</param>
    /// <param name="stature">Metres.</param>
    public static Figure Of(Pose pose, double stature)
    {
        var points = new Vec[Skeleton.Points];
        var hips = Turn(pose.Whole);
        var waist = hips * Turn(pose.Trunk.Of(AtWaist));
        var chest = waist * Turn(pose.Trunk.Of(1 - AtWaist));
        var neck = chest * Turn(pose.Head.Of(AtNeck));
        var head = neck * Turn(pose.Head.Of(1 - AtNeck));
        Put(Joint.Waist, Joint.Hips, hips.Up * Skeleton.LowerTrunk);
        Put(Joint.Chest, Joint.Waist, waist.Up * Skeleton.MiddleTrunk);
        Put(Joint.Neck, Joint.Chest, chest.Up * Skeleton.UpperTrunk);
        Put(Joint.Head, Joint.Neck, neck.Up * Skeleton.Neck);
        Put(Joint.Crown, Joint.Head, head.Up * Skeleton.Head);
        foreach (var side in Enum.GetValues<Side>())
        {
            var out_ = side == Side.Left ? 1 : -1;
            var (shoulder, elbow, wrist, hand) = Skeleton.Arm(side);
            var arm = pose.Arm(side);
            var upper = chest * Limb(arm, out_);
            var fore = upper * Turned.Forward(-arm.Bend);
            Put(shoulder, Joint.Neck, chest.Left * (Skeleton.ShoulderAside * out_));
            Put(elbow, shoulder, upper.Up * -Skeleton.UpperArm);
            Put(wrist, elbow, fore.Up * -Skeleton.Forearm);
            Put(hand, wrist, (fore * Turned.Forward(-(arm.End ?? 0))).Up * -(pose.Open ? Skeleton.OpenHand : Skeleton.Fist));

            var (hip, knee, ankle, ball) = Skeleton.Leg(side);
            var leg = pose.Leg(side);
            var thigh = hips * Limb(leg, out_);
            var shank = thigh * Turned.Forward(leg.Bend);
            Put(hip, Joint.Hips, hips.Left * (Skeleton.HipAside * out_));
            Put(knee, hip, thigh.Up * -Skeleton.Thigh);
            Put(ankle, knee, shank.Up * -Skeleton.Shank);
            Put(ball, ankle, leg.End is { } pointed ? (shank * Turned.Forward(pointed)) * FootWay : LevelFoot(shank.Ahead, thigh.Ahead));
        }

        var figure = new Figure(stature, [.. points.Select(p => p * stature)], hips, chest, head, pose.Open);
        figure = figure.Moved(Vec.Up * -figure.Lowest);
        foreach (var side in Enum.GetValues<Side>())
        {
            var (_, _, ankle, _) = Skeleton.Leg(side);
            if (pose.Leg(side).End is null && Math.Abs(figure[ankle].Y - (Skeleton.Ankle * stature)) > 1e-9 && figure[ankle].Y < Planted * stature)
            {
                figure = Reaching.Ankle(figure, side, figure[ankle] with { Y = Skeleton.Ankle * stature });
            }
        }

        return pose.Lift > 0 ? figure.Moved(Vec.Up * (pose.Lift * stature)) : figure;

        void Put(Joint joint, Joint parent, Vec way) => points[(int)joint] = points[(int)parent] + way;
    }

    /// <summary>From the ankle to the toes of a foot at a right angle to the shank.</summary>
    private static Vec FootWay => new(0, Skeleton.ToeHeight - Skeleton.Ankle, Skeleton.Toes);

    /// <summary>A level foot points where the shank faces; where that is straight up or down, where the thigh does.</summary>
    private static Vec LevelFoot(Vec shankAhead, Vec thighAhead)
    {
        var ahead = shankAhead.Level.Length > 0.3 ? shankAhead.Level.Unit : thighAhead.Level.Unit;
        return (ahead * FootWay.Z) + (Vec.Up * FootWay.Y);
    }

    private static Turned Turn(Bends bends) => Turned.Leftwards(bends.Turn) * Turned.Forward(bends.Forward) * Turned.Sideways(bends.Left);

    private static Turned Limb(LimbPose limb, int out_) => Turned.Forward(-limb.Raise) * Turned.Sideways(-limb.Spread * out_) * Turned.Leftwards(-limb.Twist * out_);
}
