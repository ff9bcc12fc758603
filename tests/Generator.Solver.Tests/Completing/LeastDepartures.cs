using Generator.Domain;
using Generator.Domain.Sketches;
using Generator.Rules.Judging;
using Generator.Rules.Replaying;
using Generator.Solver.Completing;
using Generator.Solver.Tests.Twin;

namespace Generator.Solver.Tests.Completing;

/// <summary>
/// The naive twin of completing in a tiny world: tries every routine of as many moves as are written and one more, with pauses of up to three counts, with Replay and the audit's rules alone, and counts what of a
/// sketch gives in it from what is said of prices, sharing no code with the search. What costs no less than the best known is not gone on with.
/// </summary>
internal sealed class LeastDepartures(TinyWorld world, Sketch sketch)
{
    /// <summary>Some seconds.</summary>
    public const int Most = 120_000;

    /// <summary>Half counts.</summary>
    private const int LongestGap = 6;

    private readonly List<Row> rows = [];

    private long below;

    private IReadOnlyList<Row>? best;

    /// <summary>Rows tried, all questions together; with <see cref="Most"/> of them it ends, and what it says is not all there is to say.</summary>
    public int Tried { get; private set; }

    /// <summary>It ended before it had tried everything.</summary>
    public bool IsCut => Tried >= Most;

    /// <summary>The routine in which the least gives, if that is less than so much; null where there is none.</summary>
    public (long Price, IReadOnlyList<Row> Rows)? Below(long price)
    {
        (below, best) = (price, null);
        Begin();
        return best is null ? null : (below, best);
    }

    /// <summary>Whoever comes first may set off before count 1, so what is true at the opening hangs on the first row.</summary>
    private void Begin()
    {
        foreach (var row in Rows(0))
        {
            var open = Replay.Open(world.Scene, world.Placements, Replay.LeadIn(world.Scene, world.Placements, row));
            Place(row, open, Score.Begin(world.Scene, open), new At(0, 0, 0, HasSaid: false, HasOpened: false));
        }
    }

    private void Extend(FightState state, Score score, At at)
    {
        if (at.Price >= below || score.Forbidden > 0)
        {
            return;
        }

        var left = sketch.Moves.Skip(at.Next).ToList();
        if (!at.HasOpened && left.TrueForAll(MayGo) && at.Price + left.Sum(LeftOut) is var price && price < below && score.Close(world.Scene, state).Forbidden == 0)
        {
            (below, best) = (price, [.. rows]);
        }

        if (rows.Count <= sketch.Moves.Count)
        {
            foreach (var row in Rows(state.Time))
            {
                Place(row, state, score, at);
            }
        }
    }

    /// <summary>The row fills a move of the sketch before which any number are left out, or is put in, or is an attack that takes hold before its answer.</summary>
    private void Place(Row row, FightState state, Score score, At at)
    {
        if (IsCut)
        {
            return;
        }

        Tried++;
        var step = Replay.Step(world.Scene, state, row);
        if (score.Observe(world.Scene, step) is not { Forbidden: 0 } after)
        {
            return;
        }

        rows.Add(row);
        if (!at.HasOpened)
        {
            Extend(step.After, after, at with { Price = at.Price + SketchPart.Added.Price() });
        }

        var left = 0L;
        for (var next = at.Next; next < sketch.Moves.Count; next++)
        {
            var move = sketch.Moves[next];
            if (Broken(move, row, at.HasOpened) is { } broken && (at.HasOpened ? (0, at.Shift) : OutOfTime(move, row, at)) is var (late, shift))
            {
                Extend(step.After, after, new At(next + 1, at.Price + left + broken + late, shift, HasSaid: true, HasOpened: false));
            }

            if (!at.HasOpened && Opens(move, row) && OutOfTime(move, row, at) is (0, var same))
            {
                Extend(step.After, after, new At(next, at.Price + left, same, HasSaid: true, HasOpened: true));
            }

            if (at.HasOpened || !MayGo(move))
            {
                break;
            }

            left += LeftOut(move);
        }

        rows.RemoveAt(rows.Count - 1);
    }

    /// <summary>An attack alone takes hold; what the hero does about it, written beside it, is still to come.</summary>
    private bool Opens(SketchMove move, Row row) => move is { Attack: { } attack, Technique: not null } && row.Attack >= 0 && attack.Ids.Contains(world.Book.Attacks[row.Attack].Id)
        && (move.Attacker is not { } who || who == row.Attacker) && world.Book.Techniques[row.Technique].Seizes;

    /// <summary>What of a move a row breaks, in prices; null where that must not give.</summary>
    private long? Broken(SketchMove move, Row row, bool hasOpened)
    {
        var book = world.Book;
        if (hasOpened && row.Attack >= 0)
        {
            return null;
        }

        var wrong = new List<(SketchPart Part, SketchCell? Cell)>();
        if (move.Attacker is { } who && who != row.Attacker)
        {
            wrong.Add((SketchPart.Attacker, null));
        }

        if (!hasOpened && (move.FollowsUp ? row.Attack >= 0 : move.Attack is { } attack && (row.Attack < 0 || !attack.Ids.Contains(book.Attacks[row.Attack].Id))))
        {
            wrong.Add((SketchPart.Attack, move.Attack));
        }

        if (move.Technique is { } technique && !technique.Ids.Contains(book.Techniques[row.Technique].Id))
        {
            wrong.Add((SketchPart.Technique, technique));
        }

        if (move.Reaction is { } reaction && (row.Reaction < 0 || !reaction.Ids.Contains(book.Reactions[row.Reaction].Id)))
        {
            wrong.Add((SketchPart.Reaction, reaction));
        }

        return wrong.Exists(w => w.Cell is { Firmness: Firmness.Fixed }) ? null : wrong.Sum(w => (w.Cell is { Firmness: Firmness.Wish } ? SketchPart.Wish : w.Part).Price());
    }

    /// <summary>The price of a count that is not kept, and by how much everything from then on may be later for nothing; before anything said has come all may be moved.</summary>
    private static (long Price, int Shift) OutOfTime(SketchMove move, Row row, At at)
    {
        if (move.Count is not { } count)
        {
            return (0, at.Shift);
        }

        foreach (var shift in (int[])[0, at.Shift])
        {
            if (row.Start >= count.First.Value + shift && row.Start <= count.Last.Value + shift)
            {
                return (0, at.Shift);
            }
        }

        var by = row.Start < count.First.Value ? row.Start - count.First.Value : row.Start - count.Last.Value;
        return (at.HasSaid ? SketchPart.Count.Price() : 0, by);
    }

    private static bool MayGo(SketchMove move) => move is not { Technique.Firmness: Firmness.Fixed } and not { Attack.Firmness: Firmness.Fixed } and not { Reaction.Firmness: Firmness.Fixed };

    private static long LeftOut(SketchMove move) => (move.Technique is { } technique ? Of(SketchPart.Technique, technique)
        : move.Attack is not null || move.FollowsUp ? Of(SketchPart.Attack, move.Attack) : SketchPart.Added).Price();

    private static SketchPart Of(SketchPart part, SketchCell? cell) => cell is { Firmness: Firmness.Wish } ? SketchPart.Wish : part;

    private IEnumerable<Row> Rows(int time)
    {
        var book = world.Book;
        for (var gap = 0; gap <= LongestGap; gap++)
        {
            for (var t = 0; t < book.Techniques.Count; t++)
            {
                if (book.Techniques[t].HasNoTarget)
                {
                    yield return new Row(time + gap, -1, -1, Cue.None, -1, t, -1, 0);
                    continue;
                }

                foreach (var reaction in book.Techniques[t].Reactions.Select(book.ReactionIndex))
                {
                    for (var who = 0; who < world.Scene.Cast; who++)
                    {
                        for (var k = -1; k < book.Attacks.Count; k++)
                        {
                            yield return new Row(time + gap, who, -1, Cue.Voice, k, t, reaction, 0);
                        }
                    }
                }
            }
        }
    }

    /// <summary>How far a routine has come in the sketch.</summary>
    private sealed record At(int Next, long Price, int Shift, bool HasSaid, bool HasOpened);
}
