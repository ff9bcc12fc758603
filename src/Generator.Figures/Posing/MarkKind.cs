namespace Generator.Figures.Posing;

/// <summary>Where one body meets the other, or stays out of its way.</summary>
public enum MarkKind
{
    /// <summary>It touches.</summary>
    Touch,

    /// <summary>It stops before: a planned miss.</summary>
    Miss,

    /// <summary>A hand or an arm closes round it.</summary>
    Grip,
}
