namespace Generator.Domain;

/// <summary>Joints, neck and back, one bit each; a leg or an arm is its three joints. Words for them: <see cref="BodyPartWords"/>.</summary>
[Flags]
public enum BodyParts
{
    None = 0,
    LeftHip = 1 << 0,
    LeftKnee = 1 << 1,

    /// <summary>Ankle and foot.</summary>
    LeftAnkle = 1 << 2,
    LeftShoulder = 1 << 3,
    LeftElbow = 1 << 4,

    /// <summary>Wrist and hand.</summary>
    LeftWrist = 1 << 5,
    RightHip = 1 << 6,
    RightKnee = 1 << 7,
    RightAnkle = 1 << 8,
    RightShoulder = 1 << 9,
    RightElbow = 1 << 10,
    RightWrist = 1 << 11,
    Neck = 1 << 12,
    Back = 1 << 13,
    LeftLeg = LeftHip | LeftKnee | LeftAnkle,
    LeftArm = LeftShoulder | LeftElbow | LeftWrist,
    RightLeg = RightHip | RightKnee | RightAnkle,
    RightArm = RightShoulder | RightElbow | RightWrist,
    All = (1 << 14) - 1,
}
