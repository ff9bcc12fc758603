namespace Generator.Domain;

/// <summary>Which way round the clock a technique sends the reaction's <see cref="Reaction.Round"/>.</summary>
public enum Carry
{
    /// <summary>Not round at all (through the mark to the far side still applies).</summary>
    None,
    Clockwise,
    CounterClockwise,

    /// <summary>On with the attack: clockwise when it comes at the hero's left or centre, the other way when at the right.</summary>
    WithAttack,
}
