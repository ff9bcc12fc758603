using Generator.Domain;
using Generator.Rules.Replaying;
using Google.OrTools.Sat;

namespace Generator.Solver.Filling;

/// <summary>What a row hurts, where it does; the solver's counterpart of <see cref="RowHurt"/>.</summary>
/// <param name="When">True where the row hurts it.</param>
/// <param name="OfHero">Of the hero; else of the row's target.</param>
/// <param name="What">The part and the count.</param>
/// <param name="Act">Number of the act that asks for it; −1 where the row itself says it.</param>
public sealed record HurtVars(BoolVar When, bool OfHero, Hurt What, int Act)
{
    /// <summary>The row as it is in an answer.</summary>
    public RowHurt Said => new(What, OfHero);
}
