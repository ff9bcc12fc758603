using Generator.Domain;
using Generator.Rules;

namespace Generator.Solver;

/// <summary>
/// In which postures an attacker can be at all, and whether a finish can follow in any of them: the library closed over what these two bodies, this
/// floor and the brief's setbacks allow. It looks at nothing else, so what it denies no routine has.
/// </summary>
internal static class FinishReach
{
    /// <summary>The attacker can go out.</summary>
    public static bool CanGoOut(Scene scene, int attacker)
    {
        var (book, reached) = (scene.Book, Reached(scene, attacker));
        return Enumerable.Range(0, book.Techniques.Count).Any(t =>
            book.Techniques[t].Family == Family.Finish
            && (Works(scene, t, attacker, reached) || (scene.Cast > 1 && book.Techniques[t].TakesTwo && scene.Able.WhyNotTechnique(t) is null))
            && Reactions(scene, t, attacker).Any(r => r.Posture == Posture.Out));
    }

    private static HashSet<Posture> Reached(Scene scene, int attacker)
    {
        var reached = new HashSet<Posture> { Posture.Ready };
        if (scene.Cast > 1)
        {
            // Somebody else may be sent into them.
            reached.Add(Posture.OffBalance);
        }

        var grown = true;
        while (grown)
        {
            grown = false;
            for (var t = 0; t < scene.Book.Techniques.Count; t++)
            {
                if (!Works(scene, t, attacker, reached))
                {
                    continue;
                }

                foreach (var posture in Reactions(scene, t, attacker).Select(r => r.Posture).OfType<Posture>())
                {
                    grown |= reached.Add(posture);
                }
            }
        }

        return reached;
    }

    /// <summary>Answers an attack of theirs, or finds them in a posture that it needs.</summary>
    private static bool Works(Scene scene, int t, int attacker, HashSet<Posture> reached)
    {
        var technique = scene.Book.Techniques[t];
        return !technique.HasNoTarget
            && (technique.Family != Family.Setback || scene.Brief.Setbacks is not 0)
            && scene.Able.WhyNotTechnique(t) is null
            && scene.Able.WhyNotOn(t, attacker) is null
            && (reached.Any(technique.Needs.Contains)
                || (technique.Family == Family.Escape && reached.Contains(Posture.Gripping))
                || Enumerable.Range(0, scene.Book.Attacks.Count).Any(k => technique.Answers.Contains(scene.Book.Attacks[k].Line) && scene.Able.WhyNotAttack(k, attacker) is null));
    }

    private static IEnumerable<Reaction> Reactions(Scene scene, int t, int attacker) =>
        scene.Book.Techniques[t].Reactions.Select(scene.Book.ReactionIndex).Where(r => scene.Able.WhyNotReaction(r, attacker) is null).Select(r => scene.Book.Reactions[r]);
}
