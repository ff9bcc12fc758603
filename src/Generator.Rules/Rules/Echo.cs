using Generator.Domain;
using Generator.Rules.Memories;
using Generator.Rules.Replaying;

namespace Generator.Rules.Rules;

/// <summary>
/// Something returns and ends otherwise: two points where setbacks have attacks of which none comes again and is beaten; of the signature that a brief asks for, two for each time that it lacks of two,
/// one for each beyond three, and one where it always ends the same.
/// </summary>
public sealed class Echo : Rule
{
    /// <summary>Points where no attack of a setback is beaten later, and for a signature that does not return.</summary>
    public const int Missing = 2;

    /// <summary>How often a signature comes at least and at most (the rule of three; common practice, no source).</summary>
    public const int Fewest = 2;

    public const int Most = 3;

    public override string Id => "echo";

    public override string Title => "What got through once is beaten later, and a signature returns and ends otherwise.";

    public override Severity Worst => Severity.Rough;

    public override Whose Looks => Whose.Hero;

    public override object? Begin(Scene scene, FightState open, Tally tally) => EchoMemory.None;

    public override object? Observe(Scene scene, object? memory, Step step, Tally tally)
    {
        var was = (EchoMemory)memory!;
        if (!scene.Judges(FightRule.Echo))
        {
            return was;
        }

        var now = Signed(scene, was, step, tally);
        if (step.Attack is not { } attack || step.Technique is not { } technique)
        {
            return now;
        }

        var known = now.Hit.Contains(attack.BaseId, StringComparer.Ordinal);
        return technique.Family == Family.Setback
            ? known ? now : now with { Hit = [.. now.Hit, attack.BaseId] }
            : known && !now.IsBeaten ? now with { IsBeaten = true } : now;
    }

    public override void Close(Scene scene, object? memory, FightState end, Tally tally)
    {
        var was = (EchoMemory)memory!;
        if (!scene.Judges(FightRule.Echo) || end.Moves == 0)
        {
            return;
        }

        var hero = scene.Brief.Hero.Name;
        if (was.Hit.Count > 0 && !was.IsBeaten && tally.Count(Severity.Rough, Missing))
        {
            tally.Tell(AtEnd(end, Severity.Rough, hero, $"What got through to {hero} once never comes again to be beaten.") with
            {
                Points = Missing,
                Advice = "Let the attack of a setback come again later, and be blocked or dodged.",
            });
        }

        if (scene.Brief.Signature is null)
        {
            return;
        }

        var lacking = Missing * (Fewest - was.Returns);
        if (lacking > 0 && tally.Count(Severity.Rough, lacking))
        {
            tally.Tell(AtEnd(end, Severity.Rough, hero, $"The signature comes {Amounts.Many(was.Returns, "time")}; {Fewest} make one.") with
            {
                Points = lacking,
                Measured = was.Returns,
                Allowed = Fewest,
                Unit = "times",
                Advice = "Let it come early, and again towards the end.",
            });
        }

        if (was.Returns >= Fewest && !was.IsOtherwise && tally.Count(Severity.Rough, 1))
        {
            tally.Tell(AtEnd(end, Severity.Rough, hero, "The signature always ends the same.") with { Points = 1, Advice = "Let it be stopped or survived at first, and finish later." });
        }
    }

    /// <summary>The move is the signature.</summary>
    internal static bool IsSignature(Scene scene, Step step) =>
        scene.Brief.Signature is { } id && step.Technique is { } technique && (technique.GoesBy(id) || step.Attack?.GoesBy(id) == true);

    /// <summary>What becomes of it: of a technique its reaction, of an attack the technique that meets it.</summary>
    internal static int OutcomeOf(Scene scene, Step step) => step.Technique!.GoesBy(scene.Brief.Signature!) ? step.Row.Reaction : step.Row.Technique;

    private EchoMemory Signed(Scene scene, EchoMemory was, Step step, Tally tally)
    {
        if (!IsSignature(scene, step))
        {
            return was;
        }

        var outcome = OutcomeOf(scene, step);
        var now = was with { Returns = was.Returns + 1, Outcome = outcome, IsOtherwise = was.IsOtherwise || (was.Returns > 0 && was.Outcome != outcome) };
        if (now.Returns > Most && tally.Count(Severity.Rough, 1))
        {
            tally.Tell(At(scene, step, Severity.Rough, $"The signature comes for the {now.Returns}th time; {Most} are enough.") with
            {
                Points = 1,
                Measured = now.Returns,
                Allowed = Most,
                Unit = "times",
                Advice = "Do something else here.",
            });
        }

        return now;
    }
}
