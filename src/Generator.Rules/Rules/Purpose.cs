using Generator.Domain;
using Generator.Rules.Memories;
using Generator.Rules.Replaying;
using Generator.Rules.Shapes;

namespace Generator.Rules.Rules;

/// <summary>
/// What happens has a reason that an audience sees: two points for a hold that is let go again and has led to nothing, a point for an exchange that opens with a hit on somebody who
/// stands ready, and a point for an attack from out of sight by which more than two in five so far come from there.
/// </summary>
public sealed class Purpose : Rule
{
    /// <summary>Points for a hold that leads to nothing.</summary>
    public const int IdleHold = 2;

    public override string Id => "purpose";

    public override string Title => "A hold leads to something, nobody who stands ready is hit for nothing, and most attacks are seen coming.";

    public override Severity Worst => Severity.Rough;

    public override Whose Looks => Whose.Hero;

    public override object? Begin(Scene scene, FightState open, Tally tally) => PurposeMemory.None;

    public override object? Observe(Scene scene, object? memory, Step step, Tally tally)
    {
        var was = (PurposeMemory)memory!;
        if (!scene.Judges(FightRule.Purpose))
        {
            return was;
        }

        if (ForNothing.IsPunchBag(step) && tally.Count(Severity.Rough, 1))
        {
            tally.Tell(At(scene, step, Severity.Rough, $"{Words.Name(scene, step.Row.Attacker)} stands ready, does nothing and is hit.") with
            {
                Points = 1,
                Advice = $"Let {Words.Name(scene, step.Row.Attacker)} attack first, or catch them off balance.",
            });
        }

        var used = Holds(scene, was.Used, step, tally);
        if (step.Attack is null || !step.HasTarget)
        {
            return used == was.Used ? was : was with { Used = used };
        }

        var now = new PurposeMemory(was.Attacks + 1, was.Unseen + (ForNothing.IsUnseen(scene, step) ? 1 : 0), used);
        if (now.Unseen > was.Unseen && ForNothing.TooManyUnseen(now.Unseen, now.Attacks) && tally.Count(Severity.Rough, 1))
        {
            tally.Tell(At(scene, step, Severity.Rough, $"{now.Unseen} of the {now.Attacks} attacks so far come from out of sight.") with
            {
                Points = 1,
                Measured = 100 * now.Unseen / now.Attacks,
                Allowed = ForNothing.MostUnseen,
                Unit = "%",
                Advice = "Turn the hero before it, let the attacker walk round, or let somebody come first whom the hero sees.",
            });
        }

        return now;
    }

    /// <summary>Whose hold has led to something after the move; judges those that it lets go.</summary>
    private int Holds(Scene scene, int used, Step step, Tally tally)
    {
        for (var a = 0; a < scene.Cast; a++)
        {
            var bit = 1 << a;
            if (!step.Before.Attackers[a].Posture.IsControlled())
            {
                used &= ~bit;
                continue;
            }

            used |= ForNothing.Uses(step, a) ? bit : 0;
            if ((used & bit) == 0 && !step.After.Attackers[a].Posture.IsControlled() && tally.Count(Severity.Rough, IdleHold))
            {
                tally.Tell(At(scene, step, Severity.Rough, $"{Words.Name(scene, a)} is let go, and the hold has led to nothing.") with
                {
                    Who = Words.Name(scene, a),
                    Points = IdleHold,
                    Advice = "Strike, throw or shield with it first, or do not take it.",
                });
            }
        }

        return used;
    }
}
