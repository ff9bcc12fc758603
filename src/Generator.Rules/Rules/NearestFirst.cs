using Generator.Domain;
using Generator.Rules.Replaying;

namespace Generator.Rules.Rules;

/// <summary>
/// Whoever opens an exchange has the least threat time of all active attackers, within one count. Threat times are taken as they are,
/// so whoever has stood ready longest goes first. Somebody held or gripping may be taken on at any time.
/// </summary>
public sealed class NearestFirst : Rule
{
    /// <summary>One count, in half counts.</summary>
    public const int Tolerance = HalfCounts.PerCount;

    public override string Id => "nearest-first";

    public override string Title => "Whoever opens an exchange could attack soonest of all, within one count.";

    public override Severity Worst => Severity.Broken;

    public override object? Observe(Scene scene, object? memory, Step step, Tally tally)
    {
        if (!step.Opens || step.Threats[step.Row.Attacker] is var own && own == int.MaxValue)
        {
            return null;
        }

        var sooner = -1;
        for (var a = 0; a < step.Threats.Count; a++)
        {
            if (a != step.Row.Attacker && !GoesForOther(scene, step, a) && own - Tolerance > step.Threats[a] && (sooner < 0 || step.Threats[a] < step.Threats[sooner]))
            {
                sooner = a;
            }
        }

        if (sooner >= 0 && tally.Count(Severity.Broken))
        {
            var (who, first) = (Words.Name(scene, step.Row.Attacker), Words.Name(scene, sooner));
            tally.Tell(At(scene, step, Severity.Broken, $"{first} could attack {Words.Counts(own - step.Threats[sooner])} sooner than {who}, who opens this exchange.") with
            {
                Who = $"{who}, {first}",
                Measured = (own - step.Threats[sooner]) / 2m,
                Allowed = Tolerance / 2m,
                Unit = "counts",
                Advice = $"Take on {first} first, or let {first} enter later (entrance) or stay down longer (linger).",
            });
        }

        return null;
    }

    /// <summary>Where there are two to go for, everybody goes for the nearer.</summary>
    private static bool GoesForOther(Scene scene, Step step, int attacker) => step.Before.Other is { } other
        && FloorGeometry.Whole(step.Before.Attackers[attacker].Place.To(scene.Marks[other.Mark])) < step.Before.Attackers[attacker].Distance;
}
