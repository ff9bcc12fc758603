namespace Generator.Domain;

/// <summary>The rough rules that judge whether it is a good fight; each is on or off by the brief.</summary>
public enum FightRule
{
    Rhythm,
    Story,
    Climax,
    Thinning,
    Manner,
    Momentum,
    Echo,
    Purpose,
}
