namespace Generator.Rules.Replaying;

/// <summary>What a move is to its target.</summary>
public enum MoveMode
{
    /// <summary>An attack that nothing answers.</summary>
    Unanswered,

    /// <summary>A technique without a target.</summary>
    NoTarget,

    /// <summary>Answers an attack.</summary>
    Answer,

    /// <summary>Opens on an attacker who walks in without a blow.</summary>
    OpensOnWalkIn,

    /// <summary>The grab of the row closes first, then the technique opens it.</summary>
    EscapesGrab,

    /// <summary>Uses the target's posture, without an attack.</summary>
    FollowUp,
}
