using Generator.Domain;
using Generator.Domain.Sketches;
using Generator.Rules;
using Generator.Rules.Replaying;

namespace Generator.Solver.Completing;

/// <summary>What may stand in one move of a sketch, as positions in the book: as said, or with something given up.</summary>
internal sealed class MoveChoices
{
    private readonly Scene scene;
    private readonly SketchMove move;

    public MoveChoices(Scene scene, SketchMove move)
    {
        (this.scene, this.move) = (scene, move);
        Said = [.. Combine(Attacks(move.Attack?.Ids), move.IsSuffered ? Setbacks() : Techniques(move.Technique?.Ids), Reactions(move.Reaction?.Ids)).Select(c => (c, (SketchPart?)null))];
        Opens = move is { Attack: not null, Technique: not null }
            ? [.. Combine(Attacks(move.Attack.Ids), Setbacks(), null).Where(c => scene.Book.Techniques[c.Technique].Seizes)] : [];
        Afterwards = move is { Attack: not null, Technique: not null } ? [.. Combine([-1], Techniques(move.Technique.Ids), Reactions(move.Reaction?.Ids))] : [];
        Given = [.. Gives()];
    }

    /// <summary>Exactly what is said.</summary>
    public IReadOnlyList<(MoveChoice Choice, SketchPart? Gave)> Said { get; }

    /// <summary>With one thing given up.</summary>
    public IReadOnlyList<(MoveChoice Choice, SketchPart? Gave)> Given { get; }

    /// <summary>The attack takes hold first: what it does to the hero was left open.</summary>
    public IReadOnlyList<MoveChoice> Opens { get; }

    /// <summary>What the hero does once it has.</summary>
    public IReadOnlyList<MoveChoice> Afterwards { get; }

    private IEnumerable<(MoveChoice, SketchPart?)> Gives()
    {
        var (attacks, techniques, reactions) = (Attacks(move.Attack?.Ids), Techniques(move.Technique?.Ids), Reactions(move.Reaction?.Ids));
        if (move.Reaction is { Firmness: not Firmness.Fixed } reaction)
        {
            foreach (var choice in Combine(attacks, techniques, null).Where(c => !reactions!.Contains(c.Reaction)))
            {
                yield return (choice, PartOf(reaction, SketchPart.Reaction));
            }
        }

        if (move.Technique is { Firmness: not Firmness.Fixed } technique)
        {
            var mirrored = Mirrored(technique.Ids.Select(id => scene.Book.Technique(id)).Select(t => (t.Id, t.BaseId, t.Side)), Techniques);
            foreach (var choice in Combine(attacks, mirrored, reactions))
            {
                yield return (choice, PartOf(technique, SketchPart.Side));
            }

            foreach (var choice in Combine(attacks, [.. All().Except(techniques!).Except(mirrored)], null))
            {
                yield return (choice, PartOf(technique, SketchPart.Technique));
            }
        }

        if (move.Attack is { Firmness: not Firmness.Fixed } attack)
        {
            foreach (var choice in Combine([-1, .. Enumerable.Range(0, scene.Book.Attacks.Count).Except(attacks!)], techniques, reactions))
            {
                yield return (choice, PartOf(attack, SketchPart.Attack));
            }
        }
        else if (move is { FollowsUp: true, Technique: not null })
        {
            foreach (var choice in Combine([.. Enumerable.Range(0, scene.Book.Attacks.Count)], techniques, reactions))
            {
                yield return (choice, SketchPart.Attack);
            }
        }
    }

    private static SketchPart PartOf(SketchCell cell, SketchPart part) => cell.Firmness == Firmness.Wish ? SketchPart.Wish : part;

    private int[] Setbacks() => [.. All().Where(t => scene.Book.Techniques[t].Family == Family.Setback)];

    private IEnumerable<int> All() => Enumerable.Range(0, scene.Book.Techniques.Count);

    private static int[] Mirrored(IEnumerable<(string Id, string BaseId, Side? Side)> said, Func<IReadOnlyList<string>?, int[]?> find)
    {
        var all = said.ToList();
        var ids = all.Where(s => s.Side is not null).Select(s => Mirror.Id(s.BaseId, s.Side == Side.Left ? Side.Right : Side.Left));
        return find([.. ids.Except(all.Select(s => s.Id), StringComparer.Ordinal)])!;
    }

    private int[]? Techniques(IReadOnlyList<string>? ids) => ids is null ? null : [.. ids.Select(scene.Book.TechniqueIndex).Where(i => i >= 0)];

    private int[]? Reactions(IReadOnlyList<string>? ids) => ids is null ? null : [.. ids.Select(scene.Book.ReactionIndex).Where(i => i >= 0)];

    /// <summary>What the attacker may throw: as said; nothing in a follow-up or where the hero acts alone; anything or nothing where it was left open.</summary>
    private int[] Attacks(IReadOnlyList<string>? ids) =>
        ids is not null ? [.. ids.Select(scene.Book.AttackIndex).Where(i => i >= 0)]
        : move.FollowsUp || move.Attacker is null && move.Technique is not null ? [-1]
        : [-1, .. Enumerable.Range(0, scene.Book.Attacks.Count)];

    /// <summary>All that go together; null techniques or reactions are open.</summary>
    private IEnumerable<MoveChoice> Combine(int[] attacks, int[]? techniques, int[]? reactions)
    {
        foreach (var t in techniques ?? [.. All()])
        {
            var technique = scene.Book.Techniques[t];
            if (scene.Able.WhyNotTechnique(t) is not null)
            {
                continue;
            }

            foreach (var k in attacks)
            {
                if (k >= 0 && (technique.HasNoTarget || !technique.Meets(scene.Book.Attacks[k])))
                {
                    continue;
                }

                if (technique.Reactions.Count == 0)
                {
                    yield return new MoveChoice(k, t, -1);
                    continue;
                }

                foreach (var r in technique.Reactions.Select(scene.Book.ReactionIndex).Where(r => reactions is null || reactions.Contains(r)))
                {
                    yield return new MoveChoice(k, t, r);
                }
            }
        }
    }
}
