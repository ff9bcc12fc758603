using Generator.Domain;

namespace Generator.Rules.Connecting;

/// <summary>One move out of a form.</summary>
/// <param name="Technique">What the hero does.</param>
/// <param name="Target">Number of the tied attacker whom it is done to, <see cref="Somebody"/> for one who is not tied, −1 without a target.</param>
/// <param name="Attack">What it answers, if anything.</param>
/// <param name="Reaction">How it is sold, if anybody does.</param>
/// <param name="After">How it leaves the hero.</param>
/// <param name="Leaves">The posture in which it leaves the target.</param>
public sealed record FormMove(Technique Technique, int Target, Attack? Attack, Reaction? Reaction, HeroForm After, Posture Leaves)
{
    /// <summary>An attacker who is not tied to the hero.</summary>
    public const int Somebody = HeroForm.MostTies;
}
