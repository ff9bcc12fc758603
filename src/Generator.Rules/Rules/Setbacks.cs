using Generator.Domain;
using Generator.Rules.Memories;
using Generator.Rules.Replaying;

namespace Generator.Rules.Rules;

/// <summary>
/// As many setbacks and pauses of the story as the brief asks for; one that hurts, in an act that asks for it. A pause that only gets the hero up does not count.
/// </summary>
public sealed class Setbacks : Rule
{
    public override string Id => "setbacks";

    public override string Title => "As many setbacks and pauses as the brief asks for.";

    public override Severity Worst => Severity.Broken;

    public override Whose Looks => Whose.Hero;

    public override object? Begin(Scene scene, FightState open, Tally tally) => SetbacksMemory.None;

    public override object? Observe(Scene scene, object? memory, Step step, Tally tally)
    {
        var was = (SetbacksMemory)memory!;
        return step.Technique switch
        {
            { Family: Family.Setback } => was with { Setbacks = was.Setbacks + 1, Hurt = was.Hurt | Hurt(scene, step) },
            { IsStoryPause: true } => was with { Pauses = was.Pauses + 1 },
            _ => was,
        };
    }

    public override void Close(Scene scene, object? memory, FightState end, Tally tally)
    {
        var was = (SetbacksMemory)memory!;
        var (setbacks, pauses, _) = was;
        Judge(scene, end, setbacks, scene.Brief.Setbacks, "setbacks", tally);
        Judge(scene, end, pauses, scene.Brief.Pauses, "pauses", tally);
        for (var act = 0; act < scene.Plan?.Acts.Count; act++)
        {
            if (scene.Plan.Acts[act].Hurts is { } asked && !was.HasHurt(act) && tally.Count(Severity.Broken))
            {
                tally.Tell(AtEnd(end, Severity.Broken, scene.Brief.Hero.Name, $"No setback of act {act + 1} hurts the {asked.PartInWords} until count {asked.Until.ToCountText()}; the brief asks for one.") with
                {
                    Advice = $"Write \"{asked.Text}\" beside a setback that stands there and is over before that count.",
                });
            }
        }
    }

    /// <summary>The act whose wish a setback fulfils, as a bit; none where it fulfils none.</summary>
    private static long Hurt(Scene scene, Step step)
    {
        if (step.Row.Hurt is not { OfHero: true } said || scene.Plan is not { } plan || plan.ActOf(step.Start, step.Index) is var act && plan.Acts[act].Hurts is not { } asked)
        {
            return 0;
        }

        return said.What.IsAs(asked) && asked.Until.Value > step.End ? 1L << act : 0;
    }

    private void Judge(Scene scene, FightState end, int measured, int? asked, string what, Tally tally)
    {
        if (asked is { } number && measured != number && tally.Count(Severity.Broken))
        {
            tally.Tell(AtEnd(end, Severity.Broken, scene.Brief.Hero.Name, $"The routine has {measured} {what}; the brief asks for {number}.") with
            {
                Measured = measured,
                Allowed = number,
                Unit = what,
                Advice = measured < number ? $"Write in {number - measured} more." : $"Take out {measured - number}.",
            });
        }
    }
}
