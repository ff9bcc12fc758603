namespace Generator.Domain;

/// <summary>What a performer is trained for; each level includes the ones before.</summary>
public enum Skill
{
    Novice,
    Trained,
    Stunt,
}
