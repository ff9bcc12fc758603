using Generator.Domain;

namespace Generator.Figures.Poses;

/// <summary>How a body holds itself, as angles in degrees. Authored by eye: common practice, no source.</summary>
public sealed record Pose
{
    /// <summary>Small letters and hyphens.</summary>
    public required string Id { get; init; }

    /// <summary>The whole body: forward (90 face down, −90 on the back), to the left, and turned to the left.</summary>
    public Bends Whole { get; init; }

    /// <summary>The trunk against the hips: forward, to the left, turned to the left.</summary>
    public Bends Trunk { get; init; }

    /// <summary>The head against the trunk.</summary>
    public Bends Head { get; init; }

    public LimbPose LeftArm { get; init; }

    public LimbPose RightArm { get; init; }

    public LimbPose LeftLeg { get; init; }

    public LimbPose RightLeg { get; init; }

    /// <summary>Hands are open and not fists.</summary>
    public bool Open { get; init; }

    /// <summary>How far the lowest part is above the floor, as a share of stature; 0 for whoever stands or lies.</summary>
    public double Lift { get; init; }

    public LimbPose Arm(Side side) => side == Side.Left ? LeftArm : RightArm;

    public LimbPose Leg(Side side) => side == Side.Left ? LeftLeg : RightLeg;

    /// <summary>The same with left and right changed.</summary>
    public Pose Mirrored => this with
    {
        Whole = Whole.Mirrored,
        Trunk = Trunk.Mirrored,
        Head = Head.Mirrored,
        LeftArm = RightArm,
        RightArm = LeftArm,
        LeftLeg = RightLeg,
        RightLeg = LeftLeg,
    };
}
