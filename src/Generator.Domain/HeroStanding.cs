namespace Generator.Domain;

/// <summary>How the hero stands in an act.</summary>
public enum HeroStanding
{
    OnTop,
    Even,
    InTrouble,
}
