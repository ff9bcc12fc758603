namespace Generator.Domain;

/// <summary>A part of the fight, as the story has it. The acts of a brief follow one another and fill it.</summary>
/// <param name="Percent">Of the length asked for, 1 to 100; those of all acts add up to 100.</param>
/// <param name="Hero">How the hero stands in it.</param>
/// <param name="Setbacks">How many setbacks it has, 0 to 50; null for as many as fit how the hero stands: none on top, one or more in trouble, any number where it is even.</param>
/// <param name="Hurts">What a setback in it hurts, and until when; null where nobody asks for that.</param>
public sealed record Act(int Percent, HeroStanding Hero, int? Setbacks = null, Hurt? Hurts = null)
{
    /// <summary>Setbacks that it has at least.</summary>
    public int FewestSetbacks => Setbacks ?? (Hero == HeroStanding.InTrouble || Hurts is not null ? 1 : 0);

    /// <summary>Setbacks that it has at most.</summary>
    public int MostSetbacks => Setbacks ?? (Hero == HeroStanding.OnTop ? 0 : int.MaxValue);
}
