using Generator.Domain;
using Generator.Rules.Memories;
using Generator.Rules.Replaying;
using Generator.Rules.Shapes;

namespace Generator.Rules.Rules;

/// <summary>
/// The crowd gets smaller in time, and everybody has had a part in it: of several attackers a point for each tenth of the fight, begun, by which the first goes out later than at 45 of a hundred of
/// the length asked for; where there are six moves for each, a point for each move that somebody lacks of four; a point for each blow that somebody takes beyond eight, or twelve who is to go out last.
/// </summary>
public sealed class Thinning : Rule
{
    public override string Id => "thinning";

    public override string Title => "The first goes out in time, everybody has four moves, and nobody takes more blows than one believes.";

    public override Severity Worst => Severity.Rough;

    public override Whose Looks => Whose.Both;

    public override object? Begin(Scene scene, FightState open, Tally tally) => new ThinningMemory(new int[scene.Cast], new int[scene.Cast], false);

    public override object? Observe(Scene scene, object? memory, Step step, Tally tally)
    {
        var was = (ThinningMemory)memory!;
        if (!scene.Judges(FightRule.Thinning) || !step.HasTarget)
        {
            return was;
        }

        var (moves, blows, isOut) = (new int[scene.Cast], was.Blows, was.IsAnybodyOut);
        for (var a = 0; a < scene.Cast; a++)
        {
            moves[a] = was.Moves[a] + (step.Concerns(a) ? 1 : 0);
            var isHit = Wear.Hits(step, a);
            blows = isHit ? OneMore(blows, a) : blows;
            if (isHit && blows[a] > Thin.MostBlows(scene, a) && tally.Count(Severity.Rough, 1))
            {
                tally.Tell(At(scene, step, Severity.Rough, $"{Words.Name(scene, a)} takes blow {blows[a]}; an audience believes {Thin.MostBlows(scene, a)}.") with
                {
                    Who = Words.Name(scene, a),
                    Points = 1,
                    Measured = blows[a],
                    Allowed = Thin.MostBlows(scene, a),
                    Unit = "blows",
                    Advice = "Let it be blocked, or give it to somebody else.",
                });
            }

            isOut |= step.After.Attackers[a].OutAt >= 0;
        }

        if (isOut && !was.IsAnybodyOut)
        {
            FirstOut(scene, step, tally);
        }

        return new ThinningMemory(moves, blows, isOut);
    }

    private static int[] OneMore(IReadOnlyList<int> blows, int attacker)
    {
        var more = blows.ToArray();
        more[attacker]++;
        return more;
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
            var lacking = Thin.FewestMoves - was.Moves[a];
            if (lacking > 0 && tally.Count(Severity.Rough, lacking))
            {
                tally.Tell(AtEnd(end, Severity.Rough, Words.Name(scene, a), $"{Words.Name(scene, a)} has {Amounts.Many(was.Moves[a], "move")}; {Thin.FewestMoves} make a part.") with
                {
                    Points = lacking,
                    Measured = was.Moves[a],
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
