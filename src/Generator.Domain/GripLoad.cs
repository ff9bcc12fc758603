namespace Generator.Domain;

/// <summary>What a grip on the hero asks for as long as it lasts.</summary>
/// <param name="Line">The line along which it was taken.</param>
/// <param name="Load">Asked of the attacker who grips; of grips along one line with one hand and with both, what all ask.</param>
/// <param name="HeroLoad">Asked of the hero.</param>
public sealed record GripLoad(AttackLine Line, Load Load, Load HeroLoad)
{
    /// <summary>The same grip at the hero's other side.</summary>
    public GripLoad Mirrored => new(Line.Mirrored, Load.Mirrored, HeroLoad.Mirrored);
}
