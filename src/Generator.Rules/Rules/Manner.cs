using Generator.Domain;
using Generator.Rules.Memories;
using Generator.Rules.Replaying;

namespace Generator.Rules.Rules;

/// <summary>
/// What is done fits whoever does it, and the brief: a point for each attack out of the attacker's manner and each strike, kick, throw or lock out of the hero's; three points for each
/// technique and attack that the brief avoids; two for each thing that it favours and that never comes.
/// </summary>
public sealed class Manner : Rule
{
    /// <summary>Points for what the brief avoids.</summary>
    public const int Avoided = 3;

    /// <summary>Points for what the brief favours and does not get.</summary>
    public const int Missing = 2;

    public override string Id => "manner";

    public override string Title => "What is done fits the manner of whoever does it, and what the brief avoids and favours.";

    public override Severity Worst => Severity.Rough;

    public override object? Begin(Scene scene, FightState open, Tally tally) => MannerMemory.None;

    public override object? Observe(Scene scene, object? memory, Step step, Tally tally)
    {
        var was = (MannerMemory)memory!;
        if (!scene.Judges(FightRule.Manner))
        {
            return was;
        }

        var (likings, technique, attack) = (scene.Likings, step.Row.Technique, step.Row.Attack);
        if (likings.IsOffAttack(attack, step.Row.Attacker) && tally.Count(Severity.Rough, 1))
        {
            var manner = scene.Book.MannerOf(scene.Brief.Attackers[step.Row.Attacker])!;
            Tell(scene, step, 1, $"{Words.Cap(step.Attack!.Name)} is out of the manner of {Words.Name(scene, step.Row.Attacker)} ({Words.Low(manner.Name)}).", "Let them come with what is theirs, or give the attack to somebody else.", tally);
        }

        if (likings.IsOffTechnique(technique) && tally.Count(Severity.Rough, 1))
        {
            var manner = scene.Book.MannerOf(scene.Brief.Hero)!;
            Tell(scene, step, 1, $"{Words.Cap(step.Technique!.Name)} is out of the manner of {scene.Brief.Hero.Name} ({Words.Low(manner.Name)}).", "Choose a technique of another family.", tally);
        }

        if (likings.IsAvoidedTechnique(technique) && tally.Count(Severity.Rough, Avoided))
        {
            Tell(scene, step, Avoided, $"The brief avoids {Words.Low(step.Technique!.Name)}.", "Choose another technique.", tally);
        }

        if (likings.IsAvoidedAttack(attack) && tally.Count(Severity.Rough, Avoided))
        {
            Tell(scene, step, Avoided, $"The brief avoids {Words.Low(step.Attack!.Name)}.", "Choose another attack.", tally);
        }

        return likings.Favours == 0 ? was : Seen(likings, was, technique, attack);
    }

    public override void Close(Scene scene, object? memory, FightState end, Tally tally)
    {
        var seen = ((MannerMemory)memory!).Seen;
        for (var f = 0; f < scene.Likings.Favours && scene.Judges(FightRule.Manner); f++)
        {
            if ((seen & (1UL << f)) == 0 && tally.Count(Severity.Rough, Missing))
            {
                tally.Tell(AtEnd(end, Severity.Rough, scene.Brief.Hero.Name, $"The brief favours {scene.Brief.Favour[f].Replace('-', ' ')}, and it never comes.") with
                {
                    Points = Missing,
                    Advice = "Let it come once, or leave it out of the brief.",
                });
            }
        }
    }

    private static MannerMemory Seen(Likings likings, MannerMemory was, int technique, int attack)
    {
        var seen = was.Seen;
        for (var f = 0; f < likings.Favours; f++)
        {
            seen |= likings.IsFavouredTechnique(f, technique) || likings.IsFavouredAttack(f, attack) ? 1UL << f : 0;
        }

        return seen == was.Seen ? was : new MannerMemory(seen);
    }

    private void Tell(Scene scene, Step step, int points, string message, string advice, Tally tally) =>
        tally.Tell(At(scene, step, Severity.Rough, message) with { Points = points, Advice = advice });
}
