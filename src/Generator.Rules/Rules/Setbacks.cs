using Generator.Domain;
using Generator.Rules.Memories;
using Generator.Rules.Replaying;

namespace Generator.Rules.Rules;

/// <summary>As many setbacks and pauses of the story as the brief asks for. A pause that only gets the hero up does not count.</summary>
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
            { Family: Family.Setback } => was with { Setbacks = was.Setbacks + 1 },
            { IsStoryPause: true } => was with { Pauses = was.Pauses + 1 },
            _ => was,
        };
    }

    public override void Close(Scene scene, object? memory, FightState end, Tally tally)
    {
        var (setbacks, pauses) = (SetbacksMemory)memory!;
        Judge(scene, end, setbacks, scene.Brief.Setbacks, "setbacks", tally);
        Judge(scene, end, pauses, scene.Brief.Pauses, "pauses", tally);
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
