using Generator.Domain;
using Generator.Domain.Sketches;
using Generator.Rules;
using Generator.Solver.Filling;

namespace Generator.Solver.Completing;

/// <summary>What may stand in each row of a routine that gives up less of a sketch than a price allows: what must not give at that price is there and nothing else.</summary>
internal sealed class LeastWords
{
    private readonly Scene scene;
    private readonly IReadOnlyList<SketchStep> steps;
    private readonly LeastShape shape;
    private readonly long price;
    private readonly Func<Use, bool>[] techniques, uses;

    /// <param name="scene">The scene of the search.</param>
    /// <param name="steps">The moves of the sketch.</param>
    /// <param name="shape">Which row fills which.</param>
    /// <param name="price">All that gives costs less.</param>
    public LeastWords(Scene scene, IReadOnlyList<SketchStep> steps, LeastShape shape, long price)
    {
        (this.scene, this.steps, this.shape, this.price) = (scene, steps, shape, price);
        techniques = [.. Enumerable.Range(0, shape.Rows.Count).Select(Technique)];
        uses = [.. Enumerable.Range(0, shape.Rows.Count).Select(Use)];
    }

    /// <summary>Attacker of each row; −2 where that may be anybody.</summary>
    public IReadOnlyList<int> Targets => [.. shape.Rows.Select(r => r >= 0 && steps[r].Move.Attacker is { } who && Stands(SketchPart.Attacker) ? who : -2)];

    /// <summary>Some row may be this technique.</summary>
    public bool MayDo(Technique technique)
    {
        // One that answers and one that follows up: what a row asks of attacks apart, only the technique counts here.
        var plain = new Use(UseKind.FollowUp, scene.Book.TechniqueIndex(technique.Id), technique, [], null);
        return Array.Exists(techniques, t => t(plain));
    }

    /// <summary>Each row in positions of the vocabulary.</summary>
    public IReadOnlyList<RowWords> Of(Vocabulary vocabulary) => [.. uses.Select((u, p) => RowWords.Of(scene, vocabulary, u, Attack(p), Reaction(p)))];

    private bool Stands(SketchPart? part) => part is not { } kind || kind.Price() >= price;

    private bool Stands(SketchCell? cell, SketchPart part) => cell is not null && Stands(SketchPrices.Kind(cell, part));

    private Func<Use, bool> Use(int row)
    {
        var technique = techniques[row];
        var step = shape.Rows[row] < 0 ? null : steps[shape.Rows[row]];
        var attacks = step is null ? null
            : shape.IsHold(row) ? true
            : shape.IsAnswer(row) || (step.Move.FollowsUp && Stands(SketchPart.Attack)) ? false
            : Stands(step.Move.Attack, SketchPart.Attack) ? true : (bool?)null;
        return u => technique(u) && (attacks is not { } carries || carries == u.CarriesAttack);
    }

    private Func<Use, bool> Technique(int row)
    {
        if (shape.Rows[row] < 0)
        {
            return _ => true;
        }

        var step = steps[shape.Rows[row]];
        if (shape.IsHold(row))
        {
            return u => u.Technique is { Seizes: true };
        }

        if (step.Move.Technique is { } said)
        {
            if (!Stands(said, SketchPart.Technique))
            {
                return _ => true;
            }

            var done = said.Ids.Concat(Stands(said, SketchPart.Side) ? [] : said.Ids.Select(step.OtherSideOf).OfType<string>()).ToHashSet(StringComparer.Ordinal);
            return u => u.Technique is { } t && done.Contains(t.Id);
        }

        return step.Move.IsSuffered && Stands(SketchPart.Technique) ? u => u.Technique is { Family: Family.Setback } : _ => true;
    }

    private Func<Attack, bool> Attack(int row)
    {
        var move = shape.Rows[row] < 0 ? null : steps[shape.Rows[row]].Move;
        return move is not null && (shape.IsHold(row) ? move.Attack is not null : Stands(move.Attack, SketchPart.Attack)) && move.Attack!.Ids.ToHashSet(StringComparer.Ordinal) is var thrown ? a => thrown.Contains(a.Id) : _ => true;
    }

    private Func<Reaction, bool> Reaction(int row)
    {
        var move = shape.Rows[row] < 0 || shape.IsHold(row) ? null : steps[shape.Rows[row]].Move;
        return move is not null && Stands(move.Reaction, SketchPart.Reaction) && move.Reaction!.Ids.ToHashSet(StringComparer.Ordinal) is var sold ? r => sold.Contains(r.Id) : _ => true;
    }
}
