using Generator.Rules;
using Generator.Solver.Repertoires;

namespace Generator.Solver.Constructing;

/// <summary>Which reaction is drawn: one that answers the hero's blow as often as brief and manner want, where there are others.</summary>
internal sealed class Answering(Scene scene, Dice dice)
{
    /// <summary>One of the reactions of a choice; −1 where it has none.</summary>
    public int ReactionOf(Choice choice, int attacker)
    {
        var all = choice.Reactions;
        if (all.Length == 0)
        {
            return -1;
        }

        var answers = 0;
        foreach (var reaction in all)
        {
            answers += scene.Book.Reactions[reaction].AnswersBlow ? 1 : 0;
        }

        if (answers == 0 || answers == all.Length)
        {
            return all[dice.Next(all.Length)];
        }

        var wanted = dice.Percent(scene.AnsweredPercent(attacker));
        var left = dice.Next(wanted ? answers : all.Length - answers);
        foreach (var reaction in all)
        {
            if (scene.Book.Reactions[reaction].AnswersBlow == wanted && left-- == 0)
            {
                return reaction;
            }
        }

        return all[^1];
    }
}
