using Generator.Domain;
using Generator.Domain.Edits;
using Generator.Domain.Sketches;
using Generator.Library;
using Generator.Rehearsal.Documents;
using Generator.Rules.Judging;

namespace Generator.Rehearsal.Offers;

/// <summary>
/// What would mend one finding: single changes round its move, each tried on the audit, so that the answer is there at once. Of every kind of change the best is offered. A change is a mend
/// when the finding is gone, and what is left is less: fewer unsafe and broken findings or, of a rough one, fewer points.
/// </summary>
public sealed class Mends
{
    /// <summary>Cards offered at most.</summary>
    public const int Most = 6;

    /// <summary>Half counts by which a move is tried later and sooner, half hours round the clock, and half counts until somebody is back.</summary>
    private const int Later = 12, Sooner = 4, Round = 4, Linger = 8;

    private readonly Document.State state;
    private readonly Book book;
    private readonly Finding finding;

    private Mends(Document.State state, Book book, Finding finding) => (this.state, this.book, this.finding) = (state, book, finding);

    private enum Kind
    {
        Time,
        Alone,
        Place,
        Wait,
        Reaction,
        Order,
        Technique,
        Attack,
        Before,
        Somebody,
        LeftOut,
    }

    /// <summary>The mends of a finding, the best first; none where no single change is one.</summary>
    /// <param name="state">The fight.</param>
    /// <param name="book">The library.</param>
    /// <param name="finding">One of what is found in it.</param>
    public static IReadOnlyList<Card> Of(Document.State state, Book book, Finding finding)
    {
        var mends = new Mends(state, book, finding);
        var good = new Dictionary<Kind, (long Price, string Name, Sketch After)>();
        foreach (var (kind, name, after) in mends.Tried())
        {
            if (mends.PriceOf(after) is { } price && (!good.TryGetValue(kind, out var known) || price < known.Price))
            {
                good[kind] = (price, name, after);
            }
        }

        return [.. good.OrderBy(g => g.Value.Price).ThenBy(g => g.Key).Take(Most).Select(g => Card.Of(g.Value.Name, state, g.Value.After, book))];
    }

    private Sketch Sketch => state.Sketch;

    private int At => finding.Move - 1;

    /// <summary>What is left to find, for comparing; null for what is no mend.</summary>
    private long? PriceOf(Sketch after)
    {
        const long OneGrave = 1_000_000;
        var (before, seen) = (state.Seen, Seen.Of(state.Scene, after));
        if (seen.Open is { } open && (before.Open is null || open < before.Open - 1))
        {
            return null;
        }

        var (was, now) = (before.Verdict, seen.Verdict);
        var isLess = finding.Severity >= Severity.Broken ? now.Grave.Count < was.Grave.Count : now.Grave.Count <= was.Grave.Count && now.Points < was.Points;
        var isSafer = now.Findings.Count(f => f.Severity == Severity.Unsafe) <= was.Findings.Count(f => f.Severity == Severity.Unsafe);
        var isGone = now.Findings.Count(IsLike) < was.Findings.Count(IsLike);
        return isLess && isSafer && isGone ? (now.Grave.Count * OneGrave) + now.Points : null;
    }

    private bool IsLike(Finding other) => string.Equals(other.Rule, finding.Rule, StringComparison.Ordinal) && string.Equals(other.Who, finding.Who, StringComparison.Ordinal);

    private IEnumerable<(Kind Kind, string Name, Sketch After)> Tried()
    {
        var changes = At < 0 || At >= Sketch.Moves.Count ? [] : Times().Concat(Alone()).Concat(Orders()).Concat(Waits()).Concat(Places()).Concat(Cells(At, Kind.Reaction, Kind.Technique, Kind.Attack))
            .Concat(At > 0 ? Cells(At - 1, Kind.Before, Kind.Before, Kind.Before) : []).Concat(Others()).Concat(LeftOut());
        return changes;
    }

    private IEnumerable<(Kind Kind, string Name, Sketch After)> Times()
    {
        for (var by = 1; by <= Later; by++)
        {
            yield return (Kind.Time, $"{new HalfCounts(by).InWords} later from move {Number(At)} on", Editing.Apply(Sketch, new Shift(At, by)));
        }

        for (var by = 1; by <= Sooner && At > 0; by++)
        {
            yield return (Kind.Time, $"{new HalfCounts(by).InWords} sooner from move {Number(At)} on", Editing.Apply(Sketch, new Shift(At, -by)));
        }
    }

    /// <summary>The move alone at another count, no sooner than the one before and no later than the one behind; all others stay where they are.</summary>
    private IEnumerable<(Kind Kind, string Name, Sketch After)> Alone()
    {
        if (Sketch.Moves[At].Count is not { } count)
        {
            yield break;
        }

        var (soonest, latest) = (At == 0 ? 0 : Sketch.Moves[At - 1].Count?.First.Value, At + 1 == Sketch.Moves.Count ? count.First.Value + Later : Sketch.Moves[At + 1].Count?.First.Value);
        for (var start = Math.Max(soonest ?? 0, count.First.Value - Later); start <= Math.Min(latest ?? int.MaxValue, count.First.Value + Later); start++)
        {
            var to = new HalfCounts(start);
            if (to != count.First)
            {
                yield return (Kind.Alone, $"move {Number(At)} at count {to.ToCountText()}", Editing.Apply(Sketch, new Write(At, Column.Count, new SketchMove { Line = 1, Count = (to, to) })));
            }
        }
    }

    private IEnumerable<(Kind Kind, string Name, Sketch After)> Orders()
    {
        foreach (var first in new[] { At - 1, At }.Where(f => f >= 0 && f + 1 < Sketch.Moves.Count))
        {
            yield return (Kind.Order, $"swap moves {Number(first)} and {Number(first + 1)}", Editing.Apply(Sketch, new Swap(first)));
        }
    }

    /// <summary>Whoever is in the move comes back sooner or later after what they did before.</summary>
    private IEnumerable<(Kind Kind, string Name, Sketch After)> Waits()
    {
        var who = Sketch.Moves[At].Attacker;
        var before = Enumerable.Range(0, At).Reverse().FirstOrDefault(i => Sketch.Moves[i].Attacker == who && who is not null, -1);
        for (var linger = 0; before >= 0 && linger <= Linger; linger++)
        {
            if (Sketch.Moves[before].Linger.Value != linger)
            {
                yield return (Kind.Wait, $"{Sketch.Brief.Attackers[who!.Value].Name} comes back {new HalfCounts(linger).InWords} later after move {Number(before)}", With(before, m => m with { Linger = new HalfCounts(linger) }));
            }
        }
    }

    /// <summary>The attack from elsewhere, or another opening place of somebody who has not moved yet.</summary>
    private IEnumerable<(Kind Kind, string Name, Sketch After)> Places()
    {
        if (Sketch.Moves[At] is not { Attacker: { } who } move)
        {
            yield break;
        }

        var opens = state.Seen.Routine.Placements[who];
        var usual = move.From ?? opens.Bearing;
        for (var by = 1; by <= Round; by++)
        {
            foreach (var bearing in new[] { usual + new Turn(by), usual + new Turn(-by) })
            {
                yield return (Kind.Place, $"move {Number(At)} from {bearing.InWords}", With(At, m => m with { From = bearing }));
                yield return (Kind.Place, $"{Sketch.Brief.Attackers[who].Name} opens at {bearing.InWords}", Editing.Apply(Sketch, new Place(who, string.Empty, opens with { Bearing = bearing })));
            }
        }

        foreach (var far in new[] { -100, -50, 50, 100, 150 }.Select(by => opens.Distance.Value + by).Where(d => d is >= 100 and <= 2000))
        {
            yield return (Kind.Place, $"{Sketch.Brief.Attackers[who].Name} opens {new Centimetres(far)} away", Editing.Apply(Sketch, new Place(who, string.Empty, opens with { Distance = new Centimetres(far) })));
        }

        if (opens.Entrance > HalfCounts.Zero)
        {
            yield return (Kind.Place, $"{Sketch.Brief.Attackers[who].Name} is in from the start", Editing.Apply(Sketch, new Place(who, string.Empty, opens with { Entrance = HalfCounts.Zero })));
        }
    }

    /// <summary>Another reaction, another technique with each of its reactions, or another attack that the technique meets.</summary>
    private IEnumerable<(Kind Kind, string Name, Sketch After)> Cells(int at, Kind reaction, Kind technique, Kind attack)
    {
        if (state.Seen.Routine.Moves.Count <= at || state.Seen.Routine.Moves[at] is not { Technique: { } now } move || Sketch.Moves[at].IsGap)
        {
            yield break;
        }

        var said = Sketch.Moves[at];
        var met = move.Attack is { } a ? book.Attack(a) : null;
        foreach (var other in book.Technique(now).Reactions.Where(r => r != move.Reaction && IsFree(said.Reaction)))
        {
            yield return (reaction, $"move {Number(at)}: {book.Reaction(other).Name}", With(at, m => m with { Reaction = Cell(other) }));
        }

        foreach (var other in book.Techniques.Where(t => t.Id != now && IsFree(said.Technique) && IsFree(said.Reaction) && !t.HasNoTarget && (met is null ? t.Family == book.Technique(now).Family : t.Meets(met))))
        {
            var sell = other.Reactions.Contains(move.Reaction, StringComparer.Ordinal) ? move.Reaction : other.Reactions is [var first, ..] ? first : null;
            yield return (technique, $"move {Number(at)}: {other.Name}", With(at, m => m with { Technique = Cell(other.Id), Reaction = sell is null ? null : Cell(sell), Stance = null }));
        }

        foreach (var other in book.Attacks.Where(o => met is not null && o.Id != met.Id && IsFree(said.Attack) && book.Technique(now).Meets(o)))
        {
            yield return (attack, $"move {Number(at)}: {other.Name}", With(at, m => m with { Attack = Cell(other.Id) }));
        }
    }

    /// <summary>Somebody else does the whole exchange.</summary>
    private IEnumerable<(Kind Kind, string Name, Sketch After)> Others()
    {
        if (Sketch.Moves[At].Attacker is not { } who)
        {
            yield break;
        }

        var first = At;
        while (first > 0 && Sketch.Moves[first] is { FollowsUp: true } && Sketch.Moves[first - 1].Attacker == who)
        {
            first--;
        }

        var last = At;
        while (last + 1 < Sketch.Moves.Count && Sketch.Moves[last + 1] is { FollowsUp: true } next && next.Attacker == who)
        {
            last++;
        }

        for (var other = 0; other < Sketch.Brief.Attackers.Count; other++)
        {
            if (other != who)
            {
                yield return (Kind.Somebody, $"{Sketch.Brief.Attackers[other].Name} instead of {Sketch.Brief.Attackers[who].Name}", Sketch with { Moves = [.. Sketch.Moves.Select((m, i) => i >= first && i <= last ? m with { Attacker = other, From = null } : m)] });
            }
        }
    }

    private IEnumerable<(Kind Kind, string Name, Sketch After)> LeftOut()
    {
        if (new[] { Sketch.Moves[At].Attack, Sketch.Moves[At].Technique, Sketch.Moves[At].Reaction }.All(IsFree))
        {
            yield return (Kind.LeftOut, $"without move {Number(At)}", Editing.Apply(Sketch, new Delete(At, At)));
        }
    }

    private Sketch With(int at, Func<SketchMove, SketchMove> change) => Sketch with { Moves = [.. Sketch.Moves.Select((m, i) => i == at ? change(m) : m)] };

    private static bool IsFree(SketchCell? cell) => cell?.Firmness != Firmness.Fixed;

    private static SketchCell Cell(string id) => new(id, [id]);

    private static string Number(int move) => FormattableString.Invariant($"{move + 1}");
}
