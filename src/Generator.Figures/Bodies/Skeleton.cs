using Generator.Domain;

namespace Generator.Figures.Bodies;

/// <summary>
/// Lengths as shares of stature. D&amp;C: Drillis and Contini 1966, report 1166-03, as in Winter 2009, figure 4.1. ANSUR: ANSUR II 2012 (Gordon et al. 2014,
/// NATICK/TR-15/007). Where there is neither, it says "no source".
/// </summary>
public static class Skeleton
{
    /// <summary>Of <see cref="Joint"/>, those that are joints.</summary>
    public const int Joints = 19;

    /// <summary>All joints and ends.</summary>
    public const int Points = 22;

    /// <summary>Floor to hip joint (D&amp;C 0.530): ankle, shank and thigh together.</summary>
    public const double HipHeight = Ankle + Shank + Thigh;

    /// <summary>Floor to ankle (D&amp;C).</summary>
    public const double Ankle = 0.039;

    /// <summary>Ankle to knee (D&amp;C).</summary>
    public const double Shank = 0.246;

    /// <summary>Knee to hip (D&amp;C).</summary>
    public const double Thigh = 0.245;

    /// <summary>From the middle to either hip joint (no source).</summary>
    public const double HipAside = 0.050;

    /// <summary>Hips to waist (no source).</summary>
    public const double LowerTrunk = 0.060;

    /// <summary>Waist to the middle of the chest (no source).</summary>
    public const double MiddleTrunk = 0.110;

    /// <summary>The rest of the trunk up to the height of the shoulders (D&amp;C 0.818).</summary>
    public const double UpperTrunk = 0.818 - HipHeight - LowerTrunk - MiddleTrunk;

    /// <summary>From the middle to either shoulder joint: half the biacromial breadth (ANSUR 0.237 and 0.224 of stature).</summary>
    public const double ShoulderAside = 0.115;

    /// <summary>Height of the shoulders to the height of the chin (D&amp;C 0.870).</summary>
    public const double Neck = 0.870 - 0.818;

    /// <summary>Chin to crown (D&amp;C).</summary>
    public const double Head = 1 - 0.870;

    /// <summary>Shoulder to elbow (D&amp;C; ANSUR 0.191).</summary>
    public const double UpperArm = 0.186;

    /// <summary>Elbow to wrist (D&amp;C; ANSUR 0.153 and 0.148).</summary>
    public const double Forearm = 0.146;

    /// <summary>Wrist to the middle of the fist: what is left of shoulder to grip (ANSUR 0.390).</summary>
    public const double Fist = 0.390 - UpperArm - Forearm;

    /// <summary>Wrist to fingertips (D&amp;C).</summary>
    public const double OpenHand = 0.108;

    /// <summary>Ankle to the end of the toes, level: what of the foot (D&amp;C 0.152) lies before the ankle (share of it: no source).</summary>
    public const double Toes = 0.109;

    /// <summary>Ankle to heel, level (no source).</summary>
    public const double Heel = 0.152 - Toes;

    /// <summary>Height of the toes above the floor (no source).</summary>
    public const double ToeHeight = 0.015;

    /// <summary>From the middle of the head to the face: half the length of the head (ANSUR 200 mm of 1,756).</summary>
    public const double Face = 0.057;

    /// <summary>Half the breadth of the head (ANSUR 154 mm of 1,756).</summary>
    public const double HeadHalfBreadth = 0.044;

    /// <summary>Half the thickness of the body round each joint (no source but for the head): what is drawn, and what lies on the floor.</summary>
    public static double Thickness(Joint joint) => joint switch
    {
        Joint.Hips => 0.066,
        Joint.Waist => 0.066,
        Joint.Chest => 0.070,
        Joint.Neck => 0.035,
        Joint.Head => HeadHalfBreadth,
        Joint.Crown => 0.001,
        Joint.LeftShoulder or Joint.RightShoulder => 0.036,
        Joint.LeftElbow or Joint.RightElbow => 0.026,
        Joint.LeftWrist or Joint.RightWrist => 0.019,
        Joint.LeftHand or Joint.RightHand => 0.024,
        Joint.LeftHip or Joint.RightHip => 0.056,
        Joint.LeftKnee or Joint.RightKnee => 0.037,
        Joint.LeftAnkle or Joint.RightAnkle => 0.026,
        _ => ToeHeight,
    };

    /// <summary>Shoulder, elbow, wrist and hand of a side.</summary>
    public static (Joint Root, Joint Middle, Joint End, Joint Tip) Arm(Side side) => side == Side.Left
        ? (Joint.LeftShoulder, Joint.LeftElbow, Joint.LeftWrist, Joint.LeftHand)
        : (Joint.RightShoulder, Joint.RightElbow, Joint.RightWrist, Joint.RightHand);

    /// <summary>Hip, knee, ankle and toes of a side.</summary>
    public static (Joint Root, Joint Middle, Joint End, Joint Tip) Leg(Side side) => side == Side.Left
        ? (Joint.LeftHip, Joint.LeftKnee, Joint.LeftAnkle, Joint.LeftBall)
        : (Joint.RightHip, Joint.RightKnee, Joint.RightAnkle, Joint.RightBall);

    /// <summary>The same joint on the other side.</summary>
    public static Joint Mirrored(Joint joint)
    {
        var name = joint.ToString();
        return name.StartsWith("Left", StringComparison.Ordinal) ? Enum.Parse<Joint>("Right" + name[4..])
            : name.StartsWith("Right", StringComparison.Ordinal) ? Enum.Parse<Joint>("Left" + name[5..])
            : joint;
    }
}
