using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Judging;
using Generator.Rules.Replaying;
using Generator.Solver.Alternatives;
using Generator.Solver.Tests.Constructing;
using Xunit.Abstractions;

namespace Generator.Solver.Tests.Alternatives;

/// <summary>Moves between moves that stay, filled otherwise.</summary>
public class RefillTests(ITestOutputHelper told)
{
    /// <summary>Windows of five moves of each routine, and attempts at each.</summary>
    private const int Windows = 4, Length = 5, Attempts = 2;

    private static readonly Lazy<IReadOnlyList<Routine>> Forty = new(() => [.. Enumerable.Range(1, 3).Select(Draft)]);

    [Fact]
    public void Of_twelve_windows_of_five_moves_at_least_nine_are_filled_otherwise_at_exact_counts()
    {
        var found = 0;
        foreach (var (routine, first) in Everywhere())
        {
            LockedStretch[] locked = [new(0, first - 1, (0, 0)), new(first + Length, routine.Moves.Count - 1, (0, 0))];
            if (Way(routine, locked) is { } way)
            {
                found++;
                Check(routine, way, locked);
            }
        }

        told.WriteLine($"{found} of {Everywhere().Count()} windows");
        Assert.Equal(12, Everywhere().Count());
        Assert.InRange(found, 9, 12);
    }

    [Fact]
    public void Where_counts_may_slip_they_do_so_no_further_than_they_may()
    {
        var (found, slipped) = (0, 0);
        foreach (var (routine, first) in Everywhere())
        {
            // The next three moves have to come later, by two counts at most; the rest as it can.
            LockedStretch[] locked = [new(0, first - 1, (0, 0)), new(first + Length, first + Length + 2, (1, 4)), new(first + Length + 3, routine.Moves.Count - 1, null)];
            if (Way(routine, locked) is { } way)
            {
                found++;
                Check(routine, way, locked);
                slipped += way.Moves[^1].Start == routine.Moves[^1].Start ? 0 : 1;
            }
        }

        told.WriteLine($"{found} found, {slipped} slipped to the end");
        Assert.InRange(found, 6, 12);
        Assert.InRange(slipped, 1, 12);
    }

    [Fact]
    public void Several_windows_are_filled_at_once_also_at_both_ends()
    {
        var changed = 0;
        foreach (var routine in Forty.Value)
        {
            LockedStretch[] locked = [new(5, 12, (0, 0)), new(18, 24, (0, 0)), new(30, routine.Moves.Count - 6, (0, 0))];
            if (Way(routine, locked) is { } way)
            {
                Check(routine, way, locked);
                changed += Gaps(routine, way, locked).Count(g => g);
            }
        }

        told.WriteLine($"{changed} of 12 windows");
        Assert.InRange(changed, 8, 12);
    }

    [Fact]
    public void What_is_locked_altogether_has_no_other_way()
    {
        var routine = Forty.Value[0];
        Assert.Null(Way(routine, [new(0, routine.Moves.Count - 1, (0, 0))]));
    }

    private static IEnumerable<(Routine Routine, int First)> Everywhere() =>
        Forty.Value.SelectMany((routine, r) => Enumerable.Range(0, Windows).Select(w => (routine, 4 + r + (8 * w))));

    private static Routine? Way(Routine routine, IReadOnlyList<LockedStretch> locked) =>
        new Refill(routine, locked, Drafts.Book).Ways(1, CancellationToken.None).Take(Attempts).OfType<Routine>().FirstOrDefault();

    private static Routine Draft(int seed) => Drafts.Rounds(
        new Brief
        {
            Length = new Length(null, 40, 1),
            Attackers = [.. new[] { "Bruno", "Wanda", "Piet", "Lotte" }.Select((n, i) => new AttackerPart { Name = n, Skill = i % 2 == 0 ? Skill.Stunt : Skill.Trained, Speed = 200 })],
        },
        seed,
        1).Routine ?? throw new InvalidOperationException($"Seed {seed} drafts nothing.");

    /// <summary>Clean, what is locked stands as it was in its order and within its counts, and the free moves are not all the old ones.</summary>
    private static void Check(Routine old, Routine way, LockedStretch[] locked)
    {
        Assert.True(Audit.Of(new Scene(old.Brief, Drafts.Book), way with { Brief = old.Brief }).IsClean);
        Assert.Contains(true, Gaps(old, way, locked));
    }

    /// <summary>For each run of free moves whether it is another now.</summary>
    private static List<bool> Gaps(Routine old, Routine way, LockedStretch[] locked)
    {
        var (was, now) = (StanceNotes.LeftOut(old).Moves, way.Moves);
        var (gaps, at, before) = (new List<bool>(), 0, 0);
        foreach (var stretch in locked)
        {
            var stays = was.Skip(stretch.First).Take(stretch.Last - stretch.First + 1).Select(Deed).ToList();
            var place = Enumerable.Range(at, now.Count - stays.Count - at + 1).FirstOrDefault(p => now.Skip(p).Take(stays.Count).Select(Deed).SequenceEqual(stays) && InTime(was, now, stretch, p), -1);
            Assert.True(place >= 0, $"Moves {stretch.First + 1} to {stretch.Last + 1} do not stand.");
            if (stretch.First > before)
            {
                gaps.Add(!now.Skip(at).Take(place - at).Select(Deed).SequenceEqual(was.Skip(before).Take(stretch.First - before).Select(Deed)));
            }

            (at, before) = (place + stays.Count, stretch.Last + 1);
        }

        if (before < was.Count)
        {
            gaps.Add(!now.Skip(at).Select(Deed).SequenceEqual(was.Skip(before).Select(Deed)));
        }

        return gaps;
    }

    private static bool InTime(IReadOnlyList<Move> was, IReadOnlyList<Move> now, LockedStretch stretch, int place) => stretch.Slip is not { } slip
        || Enumerable.Range(0, stretch.Last - stretch.First + 1).All(i => now[place + i].Start.Value - was[stretch.First + i].Start.Value is var by && by >= slip.Sooner && by <= slip.Later);

    private static (int?, string?, string?, string?) Deed(Move move) => (move.Attacker, move.Attack, move.Technique, move.Reaction);
}
