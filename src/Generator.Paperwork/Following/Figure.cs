namespace Generator.Paperwork.Following;

/// <summary>How a performer is drawn on the floor.</summary>
public enum Figure
{
    Standing,
    Kneeling,
    Lying,

    /// <summary>Has left the floor.</summary>
    Away,
}
