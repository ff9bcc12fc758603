using Generator.Domain;
using Generator.Rules.Replaying;

namespace Generator.Rules.Rules;

/// <summary>
/// An attack from outside the hero's sight has a spoken or sounded cue, and takes at least a reaction time itself: the cue is given as
/// the attack starts.
/// </summary>
public sealed class BlindSide : Rule
{
    public override string Id => "blind-side";

    public override string Title => "An attack from outside the hero's sight has a spoken or sounded cue in time.";

    public override Severity Worst => Severity.Unsafe;

    public override object? Observe(Scene scene, object? memory, Step step, Tally tally)
    {
        if (step.Attack is not { } attack || !step.HasTarget || Math.Abs(step.SeenFrom) <= scene.Settle.SightHalfAngle)
        {
            return null;
        }

        var seconds = scene.Brief.Tempo.SecondsIn(attack.Length);
        if (step.Row.Cue is not (Cue.Voice or Cue.Sound))
        {
            if (tally.Count(Severity.Unsafe))
            {
                tally.Tell(NoCue(scene, step, attack));
            }
        }
        else if (seconds < scene.Settle.ReactionSeconds && tally.Count(Severity.Unsafe))
        {
            tally.Tell(At(scene, step, Severity.Unsafe, $"The cue of {Words.Name(scene, step.Row.Attacker)}'s {Words.Low(attack.Name)} comes {Words.Seconds(seconds)} before contact; reacting takes {Words.Seconds(scene.Settle.ReactionSeconds)}.") with
            {
                Measured = seconds,
                Allowed = scene.Settle.ReactionSeconds,
                Unit = "s",
                Advice = "Choose a longer attack, or slow the tempo.",
            });
        }

        return null;
    }

    private Finding NoCue(Scene scene, Step step, Attack attack)
    {
        var (who, hero) = (Words.Name(scene, step.Row.Attacker), scene.Brief.Hero.Name);
        var clock = new Bearing(step.SeenFrom).InWords;
        return At(scene, step, Severity.Unsafe, $"{who}'s {Words.Low(attack.Name)} comes from {hero}'s {clock}, out of sight, without a spoken or sounded cue.") with
        {
            Measured = Math.Abs(step.SeenFrom) * Bearing.DegreesPerHalfHour,
            Allowed = scene.Settle.SightHalfAngle * Bearing.DegreesPerHalfHour,
            Unit = "degrees",
            Advice = "Give it a cue by voice or sound, or turn the hero before it comes.",
        };
    }
}
