namespace Generator.Domain;

/// <summary>The hand that holds a prop, always the holder's own.</summary>
public enum PropHand
{
    Left,
    Right,

    /// <summary>Both hands at once.</summary>
    Both,
}
