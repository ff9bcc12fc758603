using Generator.Rules;
using Generator.Rules.Replaying;
using Generator.Solver.Constructing;

namespace Generator.Solver.Completing;

/// <summary>Lays a whole routine over a sketch: of all ways in which its rows can fill the moves the one in which the least of what is said gives.</summary>
/// <param name="scene">The scene of the search.</param>
/// <param name="steps">The moves of the sketch.</param>
internal sealed class Laying(Scene scene, IReadOnlyList<SketchStep> steps)
{
    /// <summary>The routine as a filling; null where it is none.</summary>
    /// <param name="path">From the opening to its last move.</param>
    public Beginning? Over(IReadOnlyList<Node> path)
    {
        var reached = Passed([(new Beginning(null, path[0], 0), 0)]);
        foreach (var node in path.Skip(1))
        {
            reached = Passed(reached.SelectMany(r => With(r.Begun, r.Free, node)));
        }

        return reached.Select(r => r.Begun).Where(b => b.Next == steps.Count && !b.HasOpened).MinBy(b => b.Price);
    }

    /// <summary>One more row: it is put in, fills the next move, or is its attack, which takes hold before the answer comes.</summary>
    private IEnumerable<(Beginning Begun, int Free)> With(Beginning begun, int free, Node node)
    {
        var step = begun.Next < steps.Count ? steps[begun.Next] : null;
        if (!begun.HasOpened)
        {
            var isFree = step is { Move.IsGap: true } && free < step.Move.Open;
            yield return (new Beginning(begun, node, begun.Price + (isFree ? 0 : SketchPart.Added.Price())) { Next = begun.Next, Shift = begun.Shift, IsPutIn = !isFree }, free + (isFree ? 1 : 0));
        }

        if (step is null || step.Move.IsGap)
        {
            yield break;
        }

        var (late, shift) = step.Late(begun, node.Row.Start);
        if (!begun.HasOpened && shift == begun.Shift && IsHold(step, node.Row))
        {
            yield return (new Beginning(begun, node, begun.Price) { Next = begun.Next, Shift = shift, HasOpened = true }, 0);
        }

        if (step.MayBe(begun.Node, node.Row, begun.HasOpened))
        {
            yield return (new Beginning(begun, node, begun.Price + late + step.Price(begun.Node, node.Row, begun.HasOpened)) { Next = begun.Next + 1, Fills = true, Shift = shift }, 0);
        }
    }

    private bool IsHold(SketchStep step, Row row) => step.TakesHoldFirst && row is { Attacker: >= 0, Attack: >= 0 } && step.Concerns(row.Attacker, Giving.Nothing)
        && step.Move.Attack!.Ids.Contains(scene.Book.Attacks[row.Attack].Id, StringComparer.Ordinal) && scene.Book.Techniques[row.Technique].Seizes;

    /// <summary>Gaps are passed and moves left out where that may be; of ways that come to the same the cheapest is left.</summary>
    private List<(Beginning Begun, int Free)> Passed(IEnumerable<(Beginning Begun, int Free)> all)
    {
        var cheapest = new Dictionary<(int Next, bool HasOpened, int Shift, bool HasSaid, int Free), (Beginning Begun, int Free)>();
        foreach (var one in all)
        {
            Keep(one.Begun, one.Free);
        }

        return [.. cheapest.Values];

        void Keep(Beginning begun, int free)
        {
            var key = (begun.Next, begun.HasOpened, begun.Shift, begun.HasSaid, free);
            if (cheapest.TryGetValue(key, out var known) && known.Begun.Price <= begun.Price)
            {
                return;
            }

            cheapest[key] = (begun, free);
            if (begun.Next < steps.Count && !begun.HasOpened && steps[begun.Next] is var step && (step.Move.IsGap || step.MayGo))
            {
                Keep(new Beginning(begun, begun.Node, begun.Price + (step.Move.IsGap ? 0 : step.WhenLeftOut.Price())) { Next = begun.Next + 1, Shift = begun.Shift }, 0);
            }
        }
    }
}
