namespace Generator.Domain.Edits;

/// <summary>What of a move a cell says.</summary>
public enum Column
{
    Count,

    Attacker,

    From,

    Attack,

    Technique,

    Reaction,

    Note,
}
