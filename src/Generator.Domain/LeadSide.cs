namespace Generator.Domain;

/// <summary>A side as somebody stands: that of the foot in front, or the other.</summary>
public enum LeadSide
{
    Lead,
    Rear,
}
