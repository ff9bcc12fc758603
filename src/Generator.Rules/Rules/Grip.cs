using Generator.Domain;
using Generator.Rules.Replaying;

namespace Generator.Rules.Rules;

/// <summary>Nobody acts through a grip that stops them, and every grip and hold ends before the routine does.</summary>
public sealed class Grip : Rule
{
    public override string Id => "grip";

    public override string Title => "Nobody acts through a grip that stops them; every grip ends.";

    public override Severity Worst => Severity.Broken;

    public override object? Observe(Scene scene, object? memory, Step step, Tally tally)
    {
        if (AttacksFromHold(step))
        {
            if (tally.Count(Severity.Broken))
            {
                tally.Tell(AttackerStopped(scene, step));
            }
        }
        else if (Forgotten(step) is var lost and >= 0)
        {
            if (tally.Count(Severity.Broken))
            {
                tally.Tell(Overlooked(scene, step, lost));
            }
        }
        else if (step.Technique is { } technique && (BoundStops(step, technique) || HeldHand(step, technique) >= 0) && tally.Count(Severity.Broken))
        {
            tally.Tell(HeroStopped(scene, step, technique));
        }
        else if (LetsGo(step) && tally.Count(Severity.Broken))
        {
            var who = Words.Name(scene, step.Target);
            tally.Tell(At(scene, step, Severity.Broken, $"{Words.Cap(step.Technique!.Name)} lets go of {who}, who reacts as if still held.") with { Advice = "Choose a reaction that ends the hold, or a technique for the other hand." });
        }

        return null;
    }

    public override void Close(Scene scene, object? memory, FightState end, Tally tally)
    {
        for (var a = 0; a < scene.Cast; a++)
        {
            var holds = end.Holds(a);
            if ((holds || end.GrippedBy(a)) && tally.Count(Severity.Broken))
            {
                var (who, hero) = (Words.Name(scene, a), scene.Brief.Hero.Name);
                tally.Tell(AtEnd(end, Severity.Broken, who, holds ? $"{hero} still holds {who} at the end." : $"{who} still grips {hero} at the end.") with
                {
                    Advice = holds ? "Let go, throw, or finish the one who is held." : "Let the hero escape.",
                });
            }
        }
    }

    /// <summary>The attacker is held, or has the hands full with an earlier grip.</summary>
    private static bool AttacksFromHold(Step step) =>
        step.Attack is not null && step.HasTarget && step.Before.Attackers[step.Row.Attacker].Posture.IsTied();

    /// <summary>
    /// Somebody other than the target whose hold or grip the move forgets: the hand that held them, or that they held, fits the technique,
    /// yet ends otherwise. −1 for nobody.
    /// Where the hand does not fit, flow-hands speaks.
    /// </summary>
    private static int Forgotten(Step step)
    {
        if (step.Technique is not { } technique)
        {
            return -1;
        }

        var target = step.Target;
        var left = Forgets(step.LeftStart, technique.LeftNeed, step.After.Left, target);
        return left >= 0 ? left : Forgets(step.RightStart, technique.RightNeed, step.After.Right, target);
    }

    private static int Forgets(Hand hand, HandNeed need, Hand after, int target) =>
        hand.Kind is HandKind.Holding or HandKind.Held && hand.Who != target && after != hand && HandFit.Accepts(hand, need, target) ? hand.Who : -1;

    /// <summary>The hand that held the target fits the technique and goes elsewhere, and the reaction leaves the target held.</summary>
    private static bool LetsGo(Step step) =>
        step is { HasTarget: true, Technique: { } technique, Reaction: { } reaction } && (reaction.Posture ?? step.TargetPosture) is { } posture && posture.IsControlled() && !step.After.Holds(step.Target)
        && HandFit.Accepts(step.LeftStart, technique.LeftNeed, step.Target) && HandFit.Accepts(step.RightStart, technique.RightNeed, step.Target);

    private static bool BoundStops(Step step, Technique technique)
    {
        if ((technique.Bounds & (BoundSet)(1 << (int)step.BoundStart)) == BoundSet.None)
        {
            return true;
        }

        return step.BoundStart != Bound.Free && step.HasTarget && step.BoundByStart != step.Row.Attacker && !technique.Supported;
    }

    /// <summary>Who holds a hand that the technique needs otherwise; −1 for nobody.</summary>
    private static int HeldHand(Step step, Technique technique)
    {
        var target = step.Target;
        if (step.LeftStart.Kind == HandKind.Held && !HandFit.Accepts(step.LeftStart, technique.LeftNeed, target))
        {
            return step.LeftStart.Who;
        }

        return step.RightStart.Kind == HandKind.Held && !HandFit.Accepts(step.RightStart, technique.RightNeed, target) ? step.RightStart.Who : -1;
    }

    private Finding Overlooked(Scene scene, Step step, int lost)
    {
        var (who, what) = (Words.Name(scene, lost), Words.Cap(step.Technique!.Name));
        return step.Before.Attackers[lost].Posture == Posture.Gripping
            ? At(scene, step, Severity.Broken, $"{what} takes the hand that {who} grips, as if {who} had let go.") with { Advice = $"Escape from {who} first, or choose a technique for the other hand." }
            : At(scene, step, Severity.Broken, $"{what} takes the hand that holds {who}, who is simply forgotten.") with { Advice = $"Let go of {who} first, or choose a technique for the other hand." };
    }

    private Finding AttackerStopped(Scene scene, Step step)
    {
        var who = Words.Name(scene, step.Row.Attacker);
        var held = step.Before.Attackers[step.Row.Attacker].Posture.IsControlled();
        return At(scene, step, Severity.Broken, $"{who} {(held ? "is held by" : "still grips")} {Words.Name(scene, step.Before.IsWithOther(step.Row.Attacker) ? Words.Other : -1)} and cannot throw {Words.Low(step.Attack!.Name)}.") with
        {
            Advice = held ? $"Let go of {who} first." : "Let the hero escape first.",
        };
    }

    private Finding HeroStopped(Scene scene, Step step, Technique technique)
    {
        var hero = scene.Brief.Hero.Name;
        if (!BoundStops(step, technique))
        {
            var who = HeldHand(step, technique);
            return At(scene, step, Severity.Broken, $"{Words.Name(scene, who)} holds {hero}'s hand; {Words.Low(technique.Name)} does not work so.") with
            {
                Advice = "Escape first, or choose a technique that leaves the held hand alone.",
            };
        }

        var grip = step.BoundStart switch
        {
            Bound.Front => $"{Words.Name(scene, step.BoundByStart)} grips {hero} from the front",
            Bound.Rear => $"{Words.Name(scene, step.BoundByStart)} grips {hero} from behind",
            _ => $"nobody grips {hero}",
        };
        return At(scene, step, Severity.Broken, step.BoundStart == Bound.Free ? $"{Words.Cap(technique.Name)} works against a grip, and {grip}." : $"{grip}; {Words.Low(technique.Name)} does not work so.") with
        {
            Advice = step.BoundStart == Bound.Free ? "Choose a technique for a hero who is free." : "Escape first, or choose a technique that uses the grip.",
        };
    }
}
