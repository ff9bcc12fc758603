using Generator.Rules.Replaying;

namespace Generator.Paperwork.SafetyPapers;

/// <summary>Something in this very routine by which somebody might be harmed. Ratings are a proposal for the coordinator to judge.</summary>
public sealed record Hazard
{
    /// <summary>What it is, in a few words.</summary>
    public required string Title { get; init; }

    /// <summary>Names of those who might be harmed.</summary>
    public required IReadOnlyList<string> Who { get; init; }

    /// <summary>The moves at which it comes, in order; empty for the whole routine.</summary>
    public required IReadOnlyList<Step> Moves { get; init; }

    /// <summary>How they might be harmed.</summary>
    public required string How { get; init; }

    public required Harm Harm { get; init; }

    /// <summary>Before any control.</summary>
    public required Likelihood Likelihood { get; init; }

    /// <summary>In their order: design out first.</summary>
    public required IReadOnlyList<Control> Controls { get; init; }

    public RiskLevel Level => RiskMatrix.Of(Harm, Likelihood);

    /// <summary>
    /// One step less likely with a guard in place, and one more when people are told and trained besides; information alone changes nothing.
    /// Designing out is a decision, not an assumption; and no control makes grave harm remote.
    /// </summary>
    public Likelihood LikelihoodAfter
    {
        get
        {
            var steps = !Has(ControlOrder.Guard) ? 0 : Has(ControlOrder.Inform) ? 2 : 1;
            var least = Harm == Harm.Grave && Likelihood > Likelihood.Remote ? Likelihood.Unlikely : Likelihood.Remote;
            return (Likelihood)Math.Max((int)least, (int)Likelihood - steps);
        }
    }

    public RiskLevel LevelAfter => RiskMatrix.Of(Harm, LikelihoodAfter);

    /// <summary>Nothing is done but telling people.</summary>
    public bool OnlyInforms => Controls.All(c => c.Order == ControlOrder.Inform);

    private bool Has(ControlOrder order) => Controls.Any(c => c.Order == order);
}
