namespace Generator.Domain;

/// <summary>What can be said of a stance without the library.</summary>
public static class StanceExtensions
{
    /// <summary>Left and right swapped; stances without a side are their own mirror.</summary>
    public static Stance Mirrored(this Stance stance) => stance switch
    {
        Stance.LeftLead => Stance.RightLead,
        Stance.RightLead => Stance.LeftLead,
        Stance.KneelingLeft => Stance.KneelingRight,
        Stance.KneelingRight => Stance.KneelingLeft,
        Stance.OnLeftLeg => Stance.OnRightLeg,
        Stance.OnRightLeg => Stance.OnLeftLeg,
        _ => stance,
    };

    /// <summary>On the back, or on hands and knees.</summary>
    public static bool IsFloor(this Stance stance) => stance is Stance.FloorBack or Stance.FloorFront;

    public static bool IsKneeling(this Stance stance) => stance is Stance.KneelingLeft or Stance.KneelingRight;

    /// <summary>On a knee, or farther down.</summary>
    public static bool IsDown(this Stance stance) => stance.IsKneeling() || stance.IsFloor();

    public static Side Other(this Side side) => side == Side.Left ? Side.Right : Side.Left;
}
