using Generator.Domain;
using Generator.Rules.Memories;
using Generator.Rules.Replaying;
using Generator.Rules.Shapes;

namespace Generator.Rules.Rules;

/// <summary>
/// The crowd gets smaller in time, and everybody has had a part in it: of several attackers a point for each tenth of the fight, begun, by which the first goes out later than at 45 of a hundred of
/// the length asked for; where there are six moves for each, a point for each move that somebody lacks of four; a point for each blow that somebody takes beyond eight, or twelve who is to go out last. Blows wear:
/// of several attackers, whoever has taken four costs a point when they attack again sooner than two counts and half a count for each blow after the last, and a point when nothing since their last attack beat them.
/// </summary>
public sealed class Thinning : Rule
{
    public override string Id => "thinning";

    public override string Title => "The first goes out in time, everybody has four moves, blows wear, and nobody takes more than one believes.";

    public override Severity Worst => Severity.Rough;

    public override Whose Looks => Whose.Both;

    public override object? Begin(Scene scene, FightState open, Tally tally) => ThinningMemory.Fresh(scene.Cast);

    public override object? Observe(Scene scene, object? memory, Step step, Tally tally)
    {
        var was = (ThinningMemory)memory!;
        if (!scene.Judges(FightRule.Thinning) || !step.HasTarget)
        {
            return was;
        }

        if (step.Attack is not null)
        {
            Again(scene, was.Parts[step.Row.Attacker], step, tally);
        }

        var (parts, isOut) = (new PartSoFar[scene.Cast], was.IsAnybodyOut);
        for (var a = 0; a < scene.Cast; a++)
        {
            parts[a] = Worn.After(was.Parts[a], step, a);
            if (parts[a].Blows > was.Parts[a].Blows)
            {
                Hit(scene, a, parts[a].Blows, step, tally);
            }

            isOut |= step.After.Attackers[a].OutAt >= 0;
        }

        if (isOut && !was.IsAnybodyOut)
        {
            FirstOut(scene, step, tally);
        }

        return new ThinningMemory(parts, isOut);
    }

    private void Hit(Scene scene, int attacker, int blows, Step step, Tally tally)
    {
        if (blows > Thin.MostBlows(scene, attacker) && tally.Count(Severity.Rough, 1))
        {
            tally.Tell(At(scene, step, Severity.Rough, $"{Words.Name(scene, attacker)} takes blow {blows}; an audience believes {Thin.MostBlows(scene, attacker)}.") with
            {
                Who = Words.Name(scene, attacker),
                Points = 1,
                Measured = blows,
                Allowed = Thin.MostBlows(scene, attacker),
                Unit = "blows",
                Advice = "Let it be blocked, or give it to somebody else.",
            });
        }
    }

    /// <summary>Somebody attacks once more: whoever is worn has stayed away for longer, and was beaten.</summary>
    private void Again(Scene scene, PartSoFar part, Step step, Tally tally)
    {
        var who = Words.Name(scene, step.Row.Attacker);
        var (rest, needed) = (step.Contact - part.HitAt, Worn.RestOf(scene, part));
        if (rest < needed && tally.Count(Severity.Rough, 1))
        {
            tally.Tell(At(scene, step, Severity.Rough, $"{who} has taken {Amounts.Many(part.Blows, "blow")} and lands an attack {Words.Counts(rest)} after the last; so worn, they need {Words.Counts(needed)}.") with
            {
                Points = 1,
                Measured = rest,
                Allowed = needed,
                Unit = "half counts",
                Advice = $"Let {who} stay away for longer, and somebody else come first.",
            });
        }

        if (Worn.IsUnbeaten(scene, part) && tally.Count(Severity.Rough, 1))
        {
            tally.Tell(At(scene, step, Severity.Rough, $"{who} has taken {Amounts.Many(part.Blows, "blow")}, and comes again though nothing since their last attack beat them.") with
            {
                Points = 1,
                Measured = part.Blows,
                Allowed = Worn.From - 1,
                Unit = "blows",
                Advice = "Sell one of them as a blow that beats: a fall, a fold, a head that snaps back.",
            });
        }
    }

    public override void Close(Scene scene, object? memory, FightState end, Tally tally)
    {
        var was = (ThinningMemory)memory!;
        if (!scene.Judges(FightRule.Thinning) || end.Moves == 0 || !Thin.HasRoom(scene))
        {
            return;
        }

        for (var a = 0; a < scene.Cast; a++)
        {
            var lacking = Thin.FewestMoves - was.Parts[a].Moves;
            if (lacking > 0 && tally.Count(Severity.Rough, lacking))
            {
                tally.Tell(AtEnd(end, Severity.Rough, Words.Name(scene, a), $"{Words.Name(scene, a)} has {Amounts.Many(was.Parts[a].Moves, "move")}; {Thin.FewestMoves} make a part.") with
                {
                    Points = lacking,
                    Measured = was.Parts[a].Moves,
                    Allowed = Thin.FewestMoves,
                    Unit = "moves",
                    Advice = "Give them an exchange more.",
                });
            }
        }
    }

    private void FirstOut(Scene scene, Step step, Tally tally)
    {
        var late = Thin.Late(scene, step.End, step.Index);
        if (late > 0 && tally.Count(Severity.Rough, late))
        {
            tally.Tell(At(scene, step, Severity.Rough, $"This is the first out, at {Thin.PercentAt(scene, step.End, step.Index)} % of the fight.") with
            {
                Points = late,
                Measured = Thin.PercentAt(scene, step.End, step.Index),
                Allowed = Thin.FirstOut,
                Unit = "%",
                Advice = "Finish somebody sooner.",
            });
        }
    }
}
