using Generator.Domain;
using Generator.Figures.Posing;
using Generator.Rules;
using Generator.Rules.Replaying;

namespace Generator.Paperwork.Following;

/// <summary>What hero and attacker of a move have in their hands in its pictures.</summary>
internal static class FigureHands
{
    /// <summary>What a technique meets in the move, with what both hold up to the contact and afterwards.</summary>
    public static Met Met(Step step) => new(step.Attack, step.TargetPosture, step.Reaction)
    {
        Held = Held(step),
        Left = Of(step, step.After.Props),
        SecondAt = step.Second < 0 ? null : Round(step.TargetBearing - step.Before.Attackers[step.Second].Bearing),
        SecondPosture = step.Second < 0 ? null : step.Before.Attackers[step.Second].PostureAt(step.Start),
    };

    /// <summary>Half hours as degrees, −180 to 180.</summary>
    private static int Round(int halfHours) => ((((halfHours * Bearing.DegreesPerHalfHour) % 360) + 540) % 360) - 180;

    /// <summary>Up to the contact; what the attack takes up is in the hand by then.</summary>
    public static IReadOnlyList<Holding> Held(Step step) => Of(step, step.Attack?.Prop is { Then: PropFate.Takes, Into: { } into } && Rules.Rules.Prop.Of(step.Scene, step).FirstOrDefault(u => u.Who >= 0) is { Need: not null, Prop: >= 0 } taken
        ? [.. step.Before.Props.Select((p, i) => i == taken.Prop ? p with { Holder = step.Row.Attacker, Hand = into } : p)]
        : step.Before.Props);

    private static IReadOnlyList<Holding> Of(Step step, IReadOnlyList<PropState> props) =>
        [.. props.Select((p, i) => (State: p, Kind: step.Scene.Props.KindOf(i))).Where(p => p.Kind is not null && (p.State.Holder == -1 || (step.HasTarget && p.State.Holder == step.Row.Attacker)))
            .Select(p => new Holding(p.Kind!, p.State.Hand, p.State.Holder == -1))];
}
