namespace Generator.Domain;

/// <summary>How the hero stands. Heights and change times come from <c>stances.json</c>.</summary>
public enum Stance
{
    LeftLead,
    RightLead,
    Square,
    Low,
    KneelingLeft,
    KneelingRight,
    OnLeftLeg,
    OnRightLeg,
    FloorBack,
    FloorFront,
}
