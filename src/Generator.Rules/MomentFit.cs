using Generator.Domain;

namespace Generator.Rules;

/// <summary>Whether a move of a hero moment can be done at all by those whom a brief casts for it, by what skill, limits, wardrobe and floor allow.</summary>
public static class MomentFit
{
    /// <summary>Why no version of the move can be done by anybody whom it may concern; null when one can.</summary>
    public static string? WhyNot(Scene scene, MomentMove move)
    {
        string? reason = $"there is no technique {move.Technique}";
        for (var t = 0; t < scene.Book.Techniques.Count; t++)
        {
            var technique = scene.Book.Techniques[t];
            if (!technique.GoesBy(move.Technique))
            {
                continue;
            }

            reason = scene.Able.WhyNotTechnique(t) ?? WhyNobody(scene, t, move);
            if (reason is null)
            {
                return null;
            }
        }

        return reason;
    }

    /// <summary>Why no attacker whom the move may concern can be its partner.</summary>
    private static string? WhyNobody(Scene scene, int technique, MomentMove move)
    {
        if (scene.Book.Techniques[technique].HasNoTarget)
        {
            return move.Attacker is null ? null : $"{scene.Book.Techniques[technique].Name} has no partner";
        }

        string? reason = $"{move.Attacker} is not in the cast";
        for (var a = 0; a < scene.Cast; a++)
        {
            if (move.Attacker is not null && scene.Brief.Attackers[a].Name != move.Attacker)
            {
                continue;
            }

            reason = scene.Able.WhyNotOn(technique, a) ?? WhyNoReaction(scene, technique, a, move.Reaction);
            if (reason is null)
            {
                return null;
            }
        }

        return reason;
    }

    private static string? WhyNoReaction(Scene scene, int technique, int attacker, string? wanted)
    {
        var (name, suiting) = (scene.Book.Techniques[technique].Name, scene.Book.Techniques[technique].Reactions);
        if (wanted is not null && !suiting.Contains(wanted))
        {
            return $"the reaction {wanted} does not suit {name}";
        }

        string? reason = null;
        foreach (var id in suiting)
        {
            if (wanted is not null && id != wanted)
            {
                continue;
            }

            reason = scene.Able.WhyNotReaction(scene.Book.ReactionIndex(id), attacker);
            if (reason is null)
            {
                return null;
            }
        }

        return reason;
    }
}
