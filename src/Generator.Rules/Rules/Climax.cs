using Generator.Domain;
using Generator.Rules.Memories;
using Generator.Rules.Replaying;
using Generator.Rules.Shapes;

namespace Generator.Rules.Rules;

/// <summary>
/// The end is the peak, where the brief has acts: a point for each step of weight by which the last finish falls short of the heaviest move, for each move by which the last
/// fight falls short of three, and for each attacker after the first who runs off. What is judged are the figures of the same name on the shape sheet.
/// </summary>
public sealed class Climax : Rule
{
    public override string Id => "climax";

    public override string Title => "The last finish is the heaviest move, the last attacker gets a last fight, and at most one runs off.";

    public override Severity Worst => Severity.Rough;

    public override Whose Looks => Whose.Both;

    public override object? Begin(Scene scene, FightState open, Tally tally) => ClimaxMemory.None;

    public override object? Observe(Scene scene, object? memory, Step step, Tally tally)
    {
        var was = (ClimaxMemory)memory!;
        if (!scene.Judges(FightRule.Climax))
        {
            return was;
        }

        var (runOn, run) = !step.HasTarget ? (was.RunOn, was.Run) : step.Second >= 0 ? (-1, 0) : (step.Row.Attacker, step.Row.Attacker == was.RunOn ? was.Run + 1 : 1);
        var now = was with { Heaviest = Math.Max(was.Heaviest, step.Technique?.Weight ?? 0), RunOn = runOn, Run = run };

        for (var a = 0; a < scene.Cast; a++)
        {
            if (step.After.Attackers[a].OutAt >= 0 && step.Before.Attackers[a].OutAt < 0)
            {
                now = now with { LastWeight = step.Technique?.Weight ?? 1, LastFight = 1 + (was.RunOn == a ? was.Run : 0) };
                now = step.After.Attackers[a].Gone ? Left(scene, step, a, now, tally) : now;
            }
        }

        return now;
    }

    public override void Close(Scene scene, object? memory, FightState end, Tally tally)
    {
        var was = (ClimaxMemory)memory!;
        if (was.LastWeight == 0)
        {
            return;
        }

        var (shortBy, lacking) = (was.Heaviest - was.LastWeight, LastFight.FewestMoves - was.LastFight);
        if (shortBy > 0 && tally.Count(Severity.Rough, shortBy))
        {
            tally.Tell(AtEnd(end, Severity.Rough, scene.Brief.Hero.Name, $"The last finish weighs {was.LastWeight}, the heaviest move before it {was.Heaviest}.") with
            {
                Points = shortBy,
                Measured = was.LastWeight,
                Allowed = was.Heaviest,
                Unit = "weight",
                Advice = "End on a finish that weighs as much, or make what is heavier lighter.",
            });
        }

        if (lacking > 0 && tally.Count(Severity.Rough, lacking))
        {
            tally.Tell(AtEnd(end, Severity.Rough, scene.Brief.Hero.Name, $"The last fight has {Amounts.Many(was.LastFight, "move")}; it wants {LastFight.FewestMoves}.") with
            {
                Points = lacking,
                Measured = was.LastFight,
                Allowed = LastFight.FewestMoves,
                Unit = "moves",
                Advice = "Stay with the last attacker for some moves before the finish.",
            });
        }
    }

    private ClimaxMemory Left(Scene scene, Step step, int attacker, ClimaxMemory was, Tally tally)
    {
        var now = was with { RunsOff = was.RunsOff + 1 };
        if (now.RunsOff > Out.MostRunOffs && tally.Count(Severity.Rough, 1))
        {
            tally.Tell(At(scene, step, Severity.Rough, $"{Words.Name(scene, attacker)} runs off as another did before; only {Out.MostRunOffs} may.") with
            {
                Points = 1,
                Measured = now.RunsOff,
                Allowed = Out.MostRunOffs,
                Unit = "attackers",
                Advice = $"Let a finish put {Words.Name(scene, attacker)} out.",
            });
        }

        return now;
    }
}
