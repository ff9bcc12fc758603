using Generator.Domain;
using Generator.Library.Words;
using Generator.Rules.Memories;
using Generator.Rules.Replaying;

namespace Generator.Rules.Rules;

/// <summary>
/// What is done fits whoever does it, and the brief: a point for each attack out of the attacker's manner and each strike, kick, throw or lock out of the hero's; three points for each
/// technique and attack that the brief avoids; two for each thing that it favours and that never comes, and for each attacker whose manner has combinations and who throws none.
/// </summary>
public sealed class Manner : Rule
{
    /// <summary>Points for what the brief avoids.</summary>
    public const int Avoided = 3;

    /// <summary>Points for what the brief favours and does not get.</summary>
    public const int Missing = 2;

    /// <summary>Points for an attacker who should throw a combination and throws none.</summary>
    public const int Single = 2;

    public override string Id => "manner";

    public override string Title => "What is done fits the manner of whoever does it, and what the brief avoids and favours.";

    public override Severity Worst => Severity.Rough;

    public override Whose Looks => Whose.Hero;

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

        return Combined(scene, likings.Favours == 0 ? was : Seen(likings, was, technique, attack), step);
    }

    public override void Close(Scene scene, object? memory, FightState end, Tally tally)
    {
        var (seen, combined) = (((MannerMemory)memory!).Seen, ((MannerMemory)memory).Combined);
        for (var a = 0; a < scene.Cast && scene.Judges(FightRule.Manner); a++)
        {
            if (scene.Combinations.Wants(a) && (combined & (1 << a)) == 0 && tally.Count(Severity.Rough, Single))
            {
                var who = scene.Brief.Attackers[a].Name;
                tally.Tell(AtEnd(end, Severity.Rough, who, $"{who} throws no combination, and the manner has them ({Words.Low(scene.Book.MannerOf(scene.Brief.Attackers[a])!.Name)}).") with
                {
                    Points = Single,
                    Advice = $"Let {who} come again within a count where the hero has only blocked or slipped, such as with a {Words.Low(scene.Book.Combinations[scene.Combinations.Of(a)[0].Number].Name)}.",
                });
            }
        }

        for (var f = 0; f < scene.Likings.Favours && scene.Judges(FightRule.Manner); f++)
        {
            if ((seen & (1UL << f)) == 0 && tally.Count(Severity.Rough, Missing))
            {
                tally.Tell(AtEnd(end, Severity.Rough, scene.Brief.Hero.Name, $"The brief favours {WishWords.InWords(scene.Brief.Favour[f], scene.Book)}, and it never comes.") with
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

        return seen == was.Seen ? was : was with { Seen = seen };
    }

    private static MannerMemory Combined(Scene scene, MannerMemory was, Step step)
    {
        if (!scene.Combinations.AreWanted)
        {
            return was;
        }

        var (run, combined) = (was.Run.After(step), was.Combined | (was.Run.EndedBy(scene.Combinations, step) is null ? 0 : 1 << step.Row.Attacker));
        return combined == was.Combined && run == was.Run ? was : was with { Combined = combined, Run = run };
    }

    private void Tell(Scene scene, Step step, int points, string message, string advice, Tally tally) =>
        tally.Tell(At(scene, step, Severity.Rough, message) with { Points = points, Advice = advice });
}
