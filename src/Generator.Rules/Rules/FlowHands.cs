using Generator.Domain;
using Generator.Rules.Replaying;

namespace Generator.Rules.Rules;

/// <summary>Each hand that the technique needs is in a state it accepts. Of a hand that somebody holds, <see cref="Grip"/> speaks.</summary>
public sealed class FlowHands : Rule
{
    public override string Id => "flow-hands";

    public override string Title => "Each hand the technique needs is in a state it accepts.";

    public override Severity Worst => Severity.Broken;

    public override object? Observe(Scene scene, object? memory, Step step, Tally tally)
    {
        if (step.Technique is not { } technique)
        {
            return null;
        }

        var target = step.Target;
        var left = Wrong(step.LeftStart, technique.LeftNeed, target);
        if ((left || Wrong(step.RightStart, technique.RightNeed, target)) && tally.Count(Severity.Broken))
        {
            tally.Tell(left
                ? Told(scene, step, technique, "left", step.LeftStart, technique.LeftNeed)
                : Told(scene, step, technique, "right", step.RightStart, technique.RightNeed));
        }

        return null;
    }

    private static bool Wrong(Hand hand, HandNeed need, int target) => hand.Kind != HandKind.Held && !HandFit.Accepts(hand, need, target);

    private Finding Told(Scene scene, Step step, Technique technique, string side, Hand hand, HandNeed need)
    {
        var hero = scene.Brief.Hero.Name;
        return At(scene, step, Severity.Broken, $"{hero}'s {side} hand is {Words.Of(scene, hand)}; {Words.Low(technique.Name)} needs it {Words.Of(need)}.") with
        {
            Advice = hand.Kind switch
            {
                HandKind.Out => $"Leave {Words.Counts(scene.Settle.HandBack.Value)} before this move, or work with the other hand.",
                HandKind.Holding => $"Let go of {Words.Name(scene, hand.Who)} first, or choose a technique that works while holding.",
                _ => "Choose a technique for hands in guard, or take hold in the move before.",
            },
        };
    }
}
