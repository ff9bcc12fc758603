namespace Generator.Domain.Sketches;

/// <summary>Which limb is meant, as the stance and the place of the attacker make it at that moment.</summary>
public enum SketchFoot
{
    Lead,

    Rear,

    /// <summary>On the side on which the attacker is; the lead where they are straight ahead.</summary>
    Near,

    /// <summary>On the side away from the attacker; the rear where they are straight ahead.</summary>
    Far,

    /// <summary>On the side of what the hero did last.</summary>
    Same,

    /// <summary>On the other side than what the hero did last.</summary>
    Other,
}
