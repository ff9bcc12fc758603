namespace Generator.Figures.Poses;

/// <summary>What of a body is aimed.</summary>
public enum Part
{
    LeftHand,
    RightHand,
    LeftElbow,
    RightElbow,
    LeftFoot,
    RightFoot,
    LeftKnee,
    RightKnee,
    Head,
    Shoulder,
}
