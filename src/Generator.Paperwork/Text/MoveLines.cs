using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Replaying;

namespace Generator.Paperwork.Text;

/// <summary>The moves with their counts, exchanges under the name of the attacker.</summary>
internal static class MoveLines
{
    private const int MoveWidth = 4;

    private const int CountWidth = 8;

    private const int AttackWidth = 19;

    private const int TechniqueWidth = 20;

    private const int ReactionWidth = 18;

    private const int Indent = 2;

    public static IEnumerable<string> Of(Scene scene, Routine routine, IReadOnlyList<Step> steps)
    {
        yield return "MOVES";
        foreach (var line in Page.Hang("  ", Words.Tags))
        {
            yield return line;
        }

        yield return string.Empty;
        foreach (var line in Cells("MOVE", "COUNT", "ATTACK", "TECHNIQUE", "REACTION"))
        {
            yield return line;
        }

        yield return Page.Line('-');
        for (var i = 0; i < steps.Count; i++)
        {
            if (StartsGroup(steps, i))
            {
                foreach (var line in Page.Hang(string.Empty, Header(steps[i].Scene, steps[i])))
                {
                    yield return line;
                }
            }

            foreach (var line in One(steps[i].Scene, routine.Moves[i], steps[i]))
            {
                yield return line;
            }

            if (i == steps.Count - 1 || StartsGroup(steps, i + 1))
            {
                foreach (var line in ResetLines.After(scene, steps, i).SelectMany(l => Detail(l, '>')))
                {
                    yield return line;
                }

                yield return string.Empty;
            }
        }
    }

    /// <summary>Nothing but pauses share a group without a target, and nobody stands in another's: not in a routine, either, in which a blow goes to whoever is not in the exchange.</summary>
    private static bool StartsGroup(IReadOnlyList<Step> steps, int i) =>
        i == 0 || steps[i].Opens || steps[i].IsByAlly != steps[i - 1].IsByAlly || steps[i].HasTarget != steps[i - 1].HasTarget || (steps[i].HasTarget && steps[i].Row.Attacker != steps[i - 1].Row.Attacker);

    private static string Header(Scene scene, Step step)
    {
        if (!step.HasTarget)
        {
            return Page.Clean(scene.Brief.Hero.Name) + " alone";
        }

        var name = Page.Clean(scene.Brief.Attackers[step.Row.Attacker].Name);
        return $"{name} ({Words.Sign(step.Row.Attacker)}) from {Words.Clock(step.TargetBearing)}{(scene.Brief.Ally is null ? string.Empty : " of " + Page.Clean(scene.Brief.Hero.Name))}";
    }

    private static IEnumerable<string> One(Scene scene, Move move, Step step)
    {
        var technique = step.Technique?.Name ?? $"({Words.Unanswered})";
        return Cells(Words.MoveTag(step.Index + 1), Words.CountTag(step.Start), step.Attack?.Name ?? string.Empty, technique, step.Reaction?.Name ?? string.Empty)
            .Concat(StepDetails.Of(scene, move, step).SelectMany(l => Detail(l, '.')));
    }

    private static IEnumerable<string> Cells(string move, string count, string attack, string technique, string reaction) =>
        Page.Row(Indent, (move, MoveWidth), (count, CountWidth), (attack, AttackWidth), (technique, TechniqueWidth), (reaction, ReactionWidth));

    private static IEnumerable<string> Detail(string text, char mark) => Page.Hang($"{new string(' ', Indent + MoveWidth + 2)}{mark} ", text);
}
