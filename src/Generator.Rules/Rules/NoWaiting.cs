using Generator.Domain;
using Generator.Rules.Replaying;

namespace Generator.Rules.Rules;

/// <summary>
/// Nobody who could attack stands waiting longer than the brief's patience. One point for each half count beyond it, told when the
/// attacker is taken on at last, or at the end. Who lingers longer than they have cause to stands about just as well: a point for each half count of that.
/// </summary>
public sealed class NoWaiting : Rule
{
    public override string Id => "no-waiting";

    public override string Title => "Nobody who could attack stands waiting longer than the brief's patience.";

    public override Severity Worst => Severity.Rough;

    public override Whose Looks => Whose.Both;

    public override object? Observe(Scene scene, object? memory, Step step, Tally tally)
    {
        var takenOn = step.HasTarget && (step.Attack is not null || step.TargetPosture == Posture.Ready);
        if (takenOn && Excess(scene, step.Threats[step.Row.Attacker], step.Contact) is var late and > 0 && tally.Count(Severity.Rough, late))
        {
            tally.Tell(At(scene, step, Severity.Rough, string.Empty) with { Message = Words(scene, step.Row.Attacker), Points = late, Measured = (late + scene.Brief.Pace.Patience.Value) / 2m, Allowed = scene.Brief.Pace.Patience.Value / 2m, Unit = "counts", Advice = Advice });
        }

        if (step.HasTarget && step.After.Attackers[step.Row.Attacker].IsActive && step.Row.Linger - scene.LongestLinger(step.Row) is var idle and > 0 && tally.Count(Severity.Rough, idle))
        {
            var message = $"{scene.Brief.Attackers[step.Row.Attacker].Name} takes longer to recover than what was done to them gives cause for.";
            tally.Tell(At(scene, step, Severity.Rough, message) with { Points = idle, Measured = step.Row.Linger / 2m, Allowed = scene.LongestLinger(step.Row) / 2m, Unit = "counts", Advice = IdleAdvice });
        }

        return null;
    }

    public override void Close(Scene scene, object? memory, FightState end, Tally tally)
    {
        for (var a = 0; a < scene.Cast; a++)
        {
            var late = Excess(scene, Soonest(scene, end, a), end.Time);
            if (late > 0 && tally.Count(Severity.Rough, late))
            {
                tally.Tell(AtEnd(end, Severity.Rough, scene.Brief.Attackers[a].Name, Words(scene, a)) with { Points = late, Measured = (late + scene.Brief.Pace.Patience.Value) / 2m, Allowed = scene.Brief.Pace.Patience.Value / 2m, Unit = "counts", Advice = Advice });
            }
        }
    }

    private const string Advice = "Let them come sooner, enter later (entrance), or stay down longer after the last reaction (linger).";

    private const string IdleAdvice = "Let them recover sooner (linger), or end the exchange with a hit, a throw, a lock or a fall.";

    /// <summary>The threat time at the end; where there is an ally, to whichever of the two is sooner.</summary>
    private static int Soonest(Scene scene, FightState end, int attacker)
    {
        var (threat, state) = (Replay.ThreatTime(scene, end, attacker), end.Attackers[attacker]);
        return end.Other is { } other && threat < int.MaxValue ? Math.Min(threat, state.SetsOffAt + scene.WalkTime(attacker, FloorGeometry.Whole(state.Place.To(scene.Marks[other.Mark])))) : threat;
    }

    private static int Excess(Scene scene, int threat, int until) => threat == int.MaxValue ? 0 : until - threat - scene.Brief.Pace.Patience.Value;

    private static string Words(Scene scene, int attacker) => $"{scene.Brief.Attackers[attacker].Name} could attack but stands waiting.";
}
