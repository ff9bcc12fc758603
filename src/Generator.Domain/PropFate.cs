namespace Generator.Domain;

/// <summary>What becomes of the prop that a record is done with.</summary>
public enum PropFate
{
    /// <summary>Stays with whoever holds it.</summary>
    Keeps,

    /// <summary>Falls beside whoever holds it.</summary>
    Drops,

    /// <summary>Is thrown, and lies beyond whoever it was thrown at.</summary>
    Throws,

    /// <summary>Goes over into the hand of whoever does the record.</summary>
    Takes,

    /// <summary>Goes over into its holder's other hand.</summary>
    Passes,

    /// <summary>Breaks, and is of no use any more.</summary>
    Breaks,
}
