namespace Generator.Domain;

/// <summary>Where the thing must be that a record uses.</summary>
public enum ThingPlace
{
    /// <summary>Behind the attacker as the hero sees them: of an attack where they set off, else where the move leaves them.</summary>
    BehindAttacker,

    /// <summary>Behind the hero, as seen from the attacker.</summary>
    BehindHero,

    /// <summary>Beside the line to the attacker, so that a step of the hero's puts it between.</summary>
    Between,

    /// <summary>Beside the hero, on any side.</summary>
    BesideHero,

    /// <summary>On the way from one mark to the next.</summary>
    OnTheWay,
}
