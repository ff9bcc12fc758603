namespace Generator.Domain.Edits;

/// <summary>What of a move a cell says.</summary>
public enum Column
{
    Count,

    /// <summary>Hero or ally.</summary>
    By,

    Attacker,

    From,

    Cue,

    Attack,

    Technique,

    Reaction,

    /// <summary>What the blow hurts, and until when.</summary>
    Hurts,

    /// <summary>The mark to which a travel move leads.</summary>
    To,

    Stance,

    /// <summary>Counts for which a beaten attacker stays down longer.</summary>
    Linger,

    Note,
}
