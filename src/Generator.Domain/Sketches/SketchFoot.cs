namespace Generator.Domain.Sketches;

/// <summary>Which limb is meant, as seen from the stance in which the move starts.</summary>
public enum SketchFoot
{
    Lead,

    Rear,
}
