using Generator.Domain;
using Generator.Rules.Memories;
using Generator.Rules.Replaying;
using Generator.Rules.Shapes;

namespace Generator.Rules.Rules;

/// <summary>
/// Setbacks stand in the acts that want them, and are felt: two points for each too many or too few in an act; for each setback a point for every half count that it lacks of two
/// counts before the hero scores again (of three from the third on: blows wear the hero, too), and a point where the hero goes on with the family of technique that they scored with last before it.
/// </summary>
public sealed class Story : Rule
{
    /// <summary>Points for a setback too many or too few in an act.</summary>
    public const int OutOfPlace = 2;

    public override string Id => "story";

    public override string Title => "Setbacks stand in the acts that want them, cost the hero something, and change what the hero does.";

    public override Severity Worst => Severity.Rough;

    public override Whose Looks => Whose.Hero;

    public override object? Begin(Scene scene, FightState open, Tally tally) => new StoryMemory(new int[scene.Plan?.Acts.Count ?? 0], [], null);

    public override object? Observe(Scene scene, object? memory, Step step, Tally tally)
    {
        var was = (StoryMemory)memory!;
        if (!scene.Judges(FightRule.Story) || scene.Plan is not { } plan || step.Technique is not { } technique)
        {
            return was;
        }

        if (technique.Family == Family.Setback)
        {
            return Suffered(scene, was, plan, step, tally);
        }

        if (!UpperSpan.Scores(step))
        {
            return was;
        }

        if (was.Owed.Count > 0)
        {
            ScoredAgain(scene, was, step, technique.Family, tally);
        }

        return was.Owed.Count == 0 && was.Scored == technique.Family ? was : was with { Owed = [], Scored = technique.Family };
    }

    private void ScoredAgain(Scene scene, StoryMemory was, Step step, Family family, Tally tally)
    {
        foreach (var setback in was.Owed)
        {
            Judge(scene, setback, step.Start, family, f => At(scene, step, Severity.Rough, f), tally);
        }
    }

    public override void Close(Scene scene, object? memory, FightState end, Tally tally)
    {
        var was = (StoryMemory)memory!;
        if (!scene.Judges(FightRule.Story))
        {
            return;
        }

        foreach (var setback in was.Owed)
        {
            Judge(scene, setback, end.Time, null, f => AtEnd(end, Severity.Rough, scene.Brief.Hero.Name, f), tally);
        }

        for (var act = 0; act < was.Setbacks.Count; act++)
        {
            var lacking = scene.Plan!.Acts[act].FewestSetbacks - was.Setbacks[act];
            if (lacking > 0 && tally.Count(Severity.Rough, OutOfPlace * lacking))
            {
                tally.Tell(AtEnd(end, Severity.Rough, scene.Brief.Hero.Name, $"Act {act + 1} has {Amounts.Many(was.Setbacks[act], "setback")}; {scene.Plan.Acts[act].FewestSetbacks} belong there.") with
                {
                    Points = OutOfPlace * lacking,
                    Measured = was.Setbacks[act],
                    Allowed = scene.Plan.Acts[act].FewestSetbacks,
                    Unit = "setbacks",
                    Advice = "Let an attack get through there.",
                });
            }
        }
    }

    private StoryMemory Suffered(Scene scene, StoryMemory was, ActPlan plan, Step step, Tally tally)
    {
        var act = plan.ActOf(step.Start, step.Index);
        var setbacks = was.Setbacks.ToArray();
        if (++setbacks[act] > plan.Acts[act].MostSetbacks && tally.Count(Severity.Rough, OutOfPlace))
        {
            tally.Tell(At(scene, step, Severity.Rough, $"This is setback {setbacks[act]} of act {act + 1}; {plan.Acts[act].MostSetbacks} belong there.") with
            {
                Points = OutOfPlace,
                Measured = setbacks[act],
                Allowed = plan.Acts[act].MostSetbacks,
                Unit = "setbacks",
                Advice = "Let the hero have the better of it here, and keep the setback for an act in which they are in trouble.",
            });
        }

        var owed = new OwedSetback(step.Index + 1, Setback.TimeOf(step), was.Scored, setbacks.Sum() < Worn.HeroFrom ? Setback.Felt : Worn.Felt);
        return was with { Setbacks = setbacks, Owed = [.. was.Owed, owed] };
    }

    private static void Judge(Scene scene, OwedSetback setback, int again, Family? family, Func<string, Finding> found, Tally tally)
    {
        var cost = Math.Max(0, again - setback.Time);
        if (cost < setback.Felt && tally.Count(Severity.Rough, setback.Felt - cost))
        {
            tally.Tell(found($"{scene.Brief.Hero.Name} scores again {Words.Counts(cost)} after the setback of move {setback.Move}; it is felt for {Words.Counts(setback.Felt)}.") with
            {
                Points = setback.Felt - cost,
                Measured = cost,
                Allowed = setback.Felt,
                Unit = "half counts",
                Advice = "Give the attackers the time for it: a second attack, a grip to get out of, a way back to the feet.",
            });
        }

        if ((family is null || family == setback.Before) && tally.Count(Severity.Rough, 1))
        {
            tally.Tell(found($"After the setback of move {setback.Move} {scene.Brief.Hero.Name} goes on as before it.") with
            {
                Points = 1,
                Advice = "Answer with another family of technique than that which scored last: a throw where it was a strike.",
            });
        }
    }
}
