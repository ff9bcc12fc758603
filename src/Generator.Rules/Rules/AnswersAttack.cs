using Generator.Domain;
using Generator.Rules.Memories;
using Generator.Rules.Replaying;

namespace Generator.Rules.Rules;

/// <summary>
/// A defence suits the attack thrown: its line and side, the hero's level, and where the attacker stands. An attack that nothing answers
/// is told here too, unless it lands together with another: of that <see cref="OneContact"/> speaks.
/// </summary>
public sealed class AnswersAttack : Rule
{
    public override string Id => "answers-attack";

    public override string Title => "A defence suits the attack thrown: limb, line and side.";

    public override Severity Worst => Severity.Broken;

    public override object? Begin(Scene scene, FightState open, Tally tally) => AnswersMemory.Start;

    public override object? Observe(Scene scene, object? memory, Step step, Tally tally)
    {
        var was = (AnswersMemory)memory!;
        var together = step.Attack is not null && step.Row.Attacker != was.LastAttacker && Math.Abs(step.Contact - was.LastContact) < HalfCounts.PerCount;
        if (was.Pending is { } pending && !together)
        {
            TellUnanswered(scene, pending, tally);
        }

        if (step.Attack is not { } attack)
        {
            return was.Pending is null ? was : was with { Pending = null };
        }

        if (step.Technique is { } technique)
        {
            Judge(scene, step, attack, technique, tally);
            return new AnswersMemory(step.Contact, step.Row.Attacker, null);
        }

        var waits = together ? null : new UnansweredAttack(step.Index + 1, step.Start, step.Row.Attacker, step.Row.Attack);
        return new AnswersMemory(step.Contact, step.Row.Attacker, waits);
    }

    public override void Close(Scene scene, object? memory, FightState end, Tally tally)
    {
        if (((AnswersMemory)memory!).Pending is { } pending)
        {
            TellUnanswered(scene, pending, tally);
        }
    }

    /// <summary>The technique is made for an attack of this line, told by its own list alone.</summary>
    private static bool Suits(Step step, Attack attack, Technique technique) => step.Mode switch
    {
        MoveMode.OpensOnWalkIn => technique.Needs.Contains(Posture.Ready),
        MoveMode.Answer or MoveMode.EscapesGrab => technique.Answers.Contains(attack.Line),
        _ => false,
    };

    /// <summary>What is wrong with an attack of somebody who opened on a knee: they are on it until they are met first, and do not walk round on it.</summary>
    private static string? WrongLevel(Step step, Attack attack, string who) => (attack.FromKnee, step.Before.Attackers[step.Row.Attacker].Posture == Posture.Knelt) switch
    {
        (true, false) => $"{who} is off the knee by now, and {Words.Low(attack.Name)} comes from there.",
        (false, true) => $"{who} is still on the knee, and {Words.Low(attack.Name)} is thrown standing.",
        (true, true) when step.WalkRound != 0 => $"{who} is on the knee, and does not walk round for {Words.Low(attack.Name)}.",
        _ => null,
    };

    private void Judge(Scene scene, Step step, Attack attack, Technique technique, Tally tally)
    {
        var stance = step.Mode == MoveMode.EscapesGrab ? step.Before.Stance : step.StanceStart;
        var (who, hero) = (Words.Name(scene, step.Row.Attacker), scene.Brief.Hero.Name);
        if (step.Row.Attacker >= 0 && scene.Brief.Attackers[step.Row.Attacker].Kneels is not null && WrongLevel(step, attack, who) is { } wrong)
        {
            if (tally.Count(Severity.Broken))
            {
                tally.Tell(At(scene, step, Severity.Broken, wrong) with
                {
                    Advice = "Whoever opens on a knee attacks from there the first time, and on their feet from then on.",
                });
            }
        }
        else if (!Suits(step, attack, technique))
        {
            if (tally.Count(Severity.Broken))
            {
                tally.Tell(At(scene, step, Severity.Broken, $"{Words.Cap(technique.Name)} does not answer {who}'s {Words.Low(attack.Name)}, which comes {Comes(attack.Line.Side, Words.TheHero(scene))}.") with
                {
                    Advice = "Choose a technique that answers this attack, or another attack.",
                });
            }
        }
        else if (!attack.HeroStances.Contains(stance))
        {
            if (tally.Count(Severity.Broken))
            {
                tally.Tell(At(scene, step, Severity.Broken, $"{who}'s {Words.Low(attack.Name)} finds no hero at its level: {hero} is in {scene.Book.Stances.NameOf(stance)}.") with
                {
                    Advice = "Choose an attack for this level, or bring the hero up or down in the move before.",
                });
            }
        }
        else if (!attack.From.Contains(new Bearing(step.FacingStart).To(new Bearing(step.TargetBearing))) && tally.Count(Severity.Broken))
        {
            var clock = new Bearing(step.TargetBearing - step.FacingStart).InWords;
            tally.Tell(At(scene, step, Severity.Broken, $"{who} stands at {hero}'s {clock}, from where {Words.Low(attack.Name)} does not come.") with
            {
                Advice = "Choose an attack that comes from there, or let the attacker come from another bearing.",
            });
        }
    }

    private static string Comes(LineSide side, string hero) => side switch
    {
        LineSide.Left => $"at {hero}'s left",
        LineSide.Right => $"at {hero}'s right",
        _ => $"straight at {hero}",
    };

    private void TellUnanswered(Scene scene, UnansweredAttack pending, Tally tally)
    {
        if (tally.Count(Severity.Broken))
        {
            var who = Words.Name(scene, pending.Attacker);
            tally.Tell(new Finding
            {
                Rule = Id,
                Severity = Severity.Broken,
                Move = pending.Move,
                Count = new HalfCounts(pending.Start),
                Who = who,
                Message = $"Nothing answers {who}'s {Words.Low(scene.Book.Attacks[pending.Attack].Name)}.",
                Advice = "Give the hero a technique for it, or take the attack out.",
            });
        }
    }
}
