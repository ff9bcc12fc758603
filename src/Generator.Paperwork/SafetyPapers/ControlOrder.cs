namespace Generator.Paperwork.SafetyPapers;

/// <summary>Which kind of control comes first (the three steps of ISO 12100:2010: design, safeguards, information).</summary>
public enum ControlOrder
{
    /// <summary>Take the hazard out: another move, another shot, an edit.</summary>
    DesignOut,

    /// <summary>Put something between: mats, distance, a clear lane, a cue.</summary>
    Guard,

    /// <summary>Tell and train people.</summary>
    Inform,
}
