using Generator.Domain;
using Generator.Rules;

namespace Generator.Solver.Filling;

/// <summary>
/// What a model may choose from: uses of techniques, attacks and reactions, in the order of the book. What hero or floor rule out for
/// everybody is left out from the start unless a test wants it in.
/// </summary>
public sealed class Vocabulary
{
    private Vocabulary(IReadOnlyList<Use> uses, IReadOnlyList<int> attacks, IReadOnlyList<int> reactions)
    {
        Uses = uses;
        Attacks = attacks;
        Reactions = reactions;
    }

    /// <summary>The first one is the idle row.</summary>
    public IReadOnlyList<Use> Uses { get; }

    /// <summary>Positions in the book.</summary>
    public IReadOnlyList<int> Attacks { get; }

    /// <summary>Positions in the book.</summary>
    public IReadOnlyList<int> Reactions { get; }

    /// <summary>Everything that suits the scene.</summary>
    /// <param name="scene">Bodies, tempo and floor.</param>
    /// <param name="technique">Which techniques to consider; null for all.</param>
    /// <param name="keepUnfit">Keep what nobody here may do, so that rules have something to forbid (tests).</param>
    /// <param name="seconds">With reactions that bump into a second attacker and techniques that take two.</param>
    public static Vocabulary Of(Scene scene, Func<Technique, bool>? technique = null, bool keepUnfit = false, bool seconds = false)
    {
        var book = scene.Book;
        var withSecond = seconds && (scene.Cast > 1 || keepUnfit);
        bool Everybody(Func<int, string?> whyNot) => Enumerable.Range(0, scene.Cast).All(a => whyNot(a) is not null);
        var attacks = Enumerable.Range(0, book.Attacks.Count)
            .Where(k => keepUnfit || !Everybody(a => scene.Able.WhyNotAttack(k, a)))
            .ToList();
        var reactions = Enumerable.Range(0, book.Reactions.Count)
            .Where(r => (withSecond || !book.Reactions[r].HitsSecond) && (keepUnfit || !Everybody(a => scene.Able.WhyNotReaction(r, a))))
            .ToList();
        var known = reactions.Select(r => book.Reactions[r].Id).ToHashSet(StringComparer.Ordinal);
        var uses = new List<Use> { Use.IdleRow };
        for (var t = 0; t < book.Techniques.Count; t++)
        {
            var candidate = book.Techniques[t];
            var unfit = scene.Able.WhyNotTechnique(t) is not null || Everybody(a => scene.Able.WhyNotOn(t, a));
            var reacts = candidate.Reactions.Count == 0 || candidate.Reactions.Any(known.Contains);
            if ((withSecond || !candidate.TakesTwo) && reacts && (keepUnfit || !unfit) && technique?.Invoke(candidate) != false)
            {
                uses.AddRange(UsesOf(scene, t, attacks));
            }
        }

        return new Vocabulary(uses, attacks, reactions);
    }

    /// <summary>
    /// A smaller vocabulary for a quick search: a share of the uses drawn by the dice, and everything that is kept.
    /// </summary>
    /// <param name="dice">Draws.</param>
    /// <param name="share">0 to 1.</param>
    /// <param name="keep">Techniques that stay in anyway.</param>
    /// <param name="reaction">Reactions that stay in.</param>
    public Vocabulary Drawn(Random dice, double share, Func<Technique, bool> keep, Func<int, bool> reaction) =>
        new([.. Uses.Where(u => u.Technique is null || keep(u.Technique) || dice.NextDouble() < share)], Attacks, [.. Reactions.Where(reaction)]);

    private static IEnumerable<Use> UsesOf(Scene scene, int index, IReadOnlyList<int> attacks)
    {
        var technique = scene.Book.Techniques[index];
        if (technique.HasNoTarget)
        {
            yield return new Use(UseKind.NoTarget, index, technique, [], null);
            yield break;
        }

        var answered = attacks.Where(k => technique.Answers.Contains(scene.Book.Attacks[k].Line) && !scene.Book.Attacks[k].IsWalkIn).ToList();
        if (technique.Family == Family.Escape)
        {
            foreach (var grip in answered.Where(k => scene.Book.Attacks[k].IsGrab).GroupBy(k => GripOf(scene.Book.Attacks[k])))
            {
                yield return new Use(UseKind.EscapesGrab, index, technique, [.. grip], scene.Book.Attacks[grip.First()]);
            }

            answered.RemoveAll(k => scene.Book.Attacks[k].IsGrab);
        }

        if (answered.Count > 0)
        {
            yield return new Use(UseKind.Answer, index, technique, answered, null);
        }

        var walkIns = attacks.Where(k => scene.Book.Attacks[k].IsWalkIn).ToList();
        if (technique.Needs.Contains(Posture.Ready) && walkIns.Count > 0)
        {
            yield return new Use(UseKind.OpensOnWalkIn, index, technique, walkIns, null);
        }

        if (!technique.Needs.IsEmpty || technique.Family == Family.Escape)
        {
            yield return new Use(UseKind.FollowUp, index, technique, [], null);
        }
    }

    private static (HandEnd? Left, HandEnd? Right, Bound? Bound, Stance? Stance) GripOf(Attack attack) =>
        (attack.GripsLeft, attack.GripsRight, attack.GripsBound, attack.GripsStance);
}
