namespace Generator.Figures.Poses;

/// <summary>Where on the other body something is aimed.</summary>
public enum Target
{
    Head,
    Chin,
    Nape,
    Shoulders,
    Chest,
    Belly,
    Hips,
    Back,
    Loins,
    LeftShoulder,
    RightShoulder,
    LeftElbow,
    RightElbow,
    LeftWrist,
    RightWrist,
    LeftSide,
    RightSide,
    LeftThigh,
    RightThigh,
    LeftKnee,
    RightKnee,
    LeftAnkle,
    RightAnkle,
    LeftBall,
    RightBall,
}
