namespace Generator.Figures.Bodies;

/// <summary>The joints of a figure, from the hips outwards, and behind them the three ends that are no joints.</summary>
public enum Joint
{
    Hips,
    Waist,
    Chest,
    Neck,
    Head,
    LeftShoulder,
    LeftElbow,
    LeftWrist,
    RightShoulder,
    RightElbow,
    RightWrist,
    LeftHip,
    LeftKnee,
    LeftAnkle,
    LeftBall,
    RightHip,
    RightKnee,
    RightAnkle,
    RightBall,

    /// <summary>An end: the top of the head.</summary>
    Crown,

    /// <summary>An end: the middle of the fist, or the tips of an open hand.</summary>
    LeftHand,

    /// <summary>An end: as on the left.</summary>
    RightHand,
}
