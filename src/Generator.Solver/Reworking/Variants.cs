using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Replaying;
using Generator.Solver.Constructing;

namespace Generator.Solver.Reworking;

/// <summary>What may stand in the place of one old move: the same at other counts, or another in its time.</summary>
/// <param name="scene">The brief, worked out.</param>
/// <param name="guide">The old routine.</param>
/// <param name="expander">Makes the moves, where nothing forbids them.</param>
internal sealed class Variants(Scene scene, Guide guide, Expander expander)
{
    /// <summary>The most half counts by which a move is tried later than it could start.</summary>
    public const int LongestRetiming = 8;

    /// <summary>Half hours by which an attacker is tried from elsewhere.</summary>
    public const int FarthestRound = 4;

    /// <summary>In the time of the move something without a partner, or against the same attacker another technique or reaction, or another attack for the same technique.</summary>
    public IEnumerable<Node> Swapped(Node node, int move)
    {
        var old = guide.Old[move].Row;
        if (old.Technique < 0 || (node.IsOpening && old.Attacker != node.First))
        {
            yield break;
        }

        var start = node.IsOpening ? node.FirstStart : Math.Max(old.Start, node.State.Time);
        foreach (var row in Swaps(old with { Start = start }, guide.Leads(node, move), node.State.Mark))
        {
            if (expander.AsWritten(node, row) is { } child)
            {
                yield return child;
            }
        }
    }

    /// <summary>The same move at other counts, with another linger, or where it was left.</summary>
    public IEnumerable<Node> Retimed(Node node, int move)
    {
        var row = guide.Old[move].Row;
        if (row.Technique < 0 || (node.IsOpening && row.Attacker != node.First) || guide.Leads(node, move) != row.To)
        {
            yield break;
        }

        var first = node.IsOpening ? node.FirstStart : node.State.Time;
        var last = node.IsOpening ? node.FirstStart : first + LongestRetiming;
        for (var start = first; start <= last; start++)
        {
            if ((expander.AsWritten(node, row with { Start = start }) ?? expander.Fitted(node, row with { Start = start })) is { } child)
            {
                yield return child;
            }
        }

        var usual = Math.Max(row.Start, first);
        foreach (var other in Others(row with { Start = usual }).Concat(Elsewhere(node, row with { Start = usual })))
        {
            if (expander.AsWritten(node, other) is { } child)
            {
                yield return child;
            }
        }
    }

    private IEnumerable<Row> Swaps(Row old, int leads, int mark)
    {
        var book = scene.Book;
        for (var t = 0; t < book.Techniques.Count; t++)
        {
            var technique = book.Techniques[t];

            // A travel move in place of another leads where that did; in place of one that stays it leads to the next mark.
            var to = technique.Travel is null ? -1 : leads >= 0 ? leads : mark + 1 < scene.Marks.Count ? mark + 1 : -1;
            if (technique.HasNoTarget)
            {
                yield return new Row(old.Start, -1, -1, Cue.None, -1, t, -1, 0) { To = to };
                continue;
            }

            if (old.Attacker < 0 || (old.Attack >= 0 && !book.Attacks[old.Attack].IsWalkIn && !technique.Answers.Contains(book.Attacks[old.Attack].Line)))
            {
                continue;
            }

            foreach (var reaction in technique.Reactions.Where(r => IsAnswered(old) || !book.Reaction(r).AnswersBlow))
            {
                var row = old with { Technique = t, Reaction = book.ReactionIndex(reaction), To = to };
                if (row.Technique != old.Technique || row.Reaction != old.Reaction || row.To != old.To)
                {
                    yield return row;
                }
            }
        }

        for (var k = 0; k < book.Attacks.Count && old.Attack >= 0; k++)
        {
            if (k != old.Attack)
            {
                yield return old with { Attack = k };
            }
        }
    }

    /// <summary>A blow that hits goes on hitting, whatever becomes of the technique.</summary>
    private bool IsAnswered(in Row row) => row.Reaction >= 0 && scene.Book.Reactions[row.Reaction].AnswersBlow;

    /// <summary>The attack from other bearings, nearest first: so somebody else's lane comes free, or their own.</summary>
    private static IEnumerable<Row> Elsewhere(Node node, Row row)
    {
        if (row.Attack < 0)
        {
            yield break;
        }

        var usual = new Bearing(row.From >= 0 ? row.From : node.State.Attackers[row.Attacker].Bearing);
        for (var round = 1; round <= FarthestRound; round++)
        {
            yield return row with { From = (usual + new Turn(round)).HalfHours };
            yield return row with { From = (usual + new Turn(-round)).HalfHours };
        }
    }

    private IEnumerable<Row> Others(Row row)
    {
        for (var linger = 0; linger <= scene.LongestLinger(row) && row.Attacker >= 0; linger++)
        {
            if (linger != row.Linger)
            {
                yield return row with { Linger = linger };
            }
        }

        if (row.From >= 0)
        {
            yield return row with { From = -1 };
        }
    }
}
