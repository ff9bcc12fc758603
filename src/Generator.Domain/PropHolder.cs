namespace Generator.Domain;

/// <summary>Where the prop is that a record needs.</summary>
public enum PropHolder
{
    /// <summary>In the hero's hand.</summary>
    Hero,

    /// <summary>In the attacker's hand.</summary>
    Attacker,

    /// <summary>On the floor, within reach of whoever takes it up.</summary>
    Floor,
}
