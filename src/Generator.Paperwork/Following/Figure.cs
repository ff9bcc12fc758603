namespace Generator.Paperwork.Following;

/// <summary>How a performer is drawn on the floor.</summary>
public enum Figure
{
    Standing,
    Kneeling,
    Lying,

    /// <summary>Not in yet, or has left the floor.</summary>
    Away,
}
