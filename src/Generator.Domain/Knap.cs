namespace Generator.Domain;

/// <summary>Who makes the sound of the hit.</summary>
public enum Knap
{
    /// <summary>Breath only.</summary>
    Breath,
    Victim,
    Hero,

    /// <summary>The contact itself sounds.</summary>
    Contact,
}
