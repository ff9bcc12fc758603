using Generator.Domain;
using Generator.Library;
using Generator.Rules;
using Generator.Rules.Judging;

namespace Generator.Benchmarks.Stored;

/// <summary>
/// Tightens a brief round a routine that satisfies it: length, hero moments, half of the opening places, caps on falls and the order of ending are
/// taken from the routine, so that the brief asks for much and yet is known to have a routine, whether or not any search finds one.
/// </summary>
internal static class Tightening
{
    /// <summary>The tightened brief and the points that the routine costs under it; null when the audit does not pass it.</summary>
    public static (Brief Brief, int Points)? Of(Routine routine, Book book, Random random)
    {
        var counts = Counts(routine, book);
        var brief = routine.Brief with { Length = new Length(counts, null, 1) };
        brief = brief with
        {
            Moments = Moments(routine, book, counts, random),
            Attackers = [.. brief.Attackers.Select((a, i) => i % 2 == 0 ? Placed(a, routine, i) : Spared(a, routine, book, i))],
            Ending = Ending(routine, book),
        };
        var verdict = Audit.Of(new Scene(brief, book), routine with { Brief = brief });
        return verdict.IsClean ? (brief, verdict.Points) : null;
    }

    /// <summary>Counts from the first to the end of the last move, rounded down.</summary>
    private static int Counts(Routine routine, Book book)
    {
        var last = routine.Moves[^1];
        return (last.Start + book.Technique(last.Technique!).Length).Value / HalfCounts.PerCount;
    }

    /// <summary>One for every dozen moves, at most eight: some hit, throw or lock of the routine, on the same attacker, at most a twenty-fourth of the routine sooner or later.</summary>
    private static List<Moment> Moments(Routine routine, Book book, int counts, Random random)
    {
        var wanted = Math.Clamp(routine.Moves.Count / 12, 1, 8);
        var fitting = routine.Moves.Where(m => m is { Technique: { } id, Attacker: not null } && book.Technique(id).Family is Domain.Family.Strike or Domain.Family.Kick or Domain.Family.Throw or Domain.Family.Lock).ToArray();
        random.Shuffle(fitting);
        return
        [
            .. fitting.DistinctBy(m => book.Technique(m.Technique!).BaseId, StringComparer.Ordinal).Take(wanted).OrderBy(m => m.Start)
                .Select(m => new Moment([new MomentMove(book.Technique(m.Technique!).BaseId, routine.Brief.Attackers[m.Attacker!.Value].Name, null, null)], Around(m.Start, -Math.Max(2, counts / 24)), Around(m.Start, Math.Max(2, counts / 24)))),
        ];
    }

    private static HalfCounts Around(HalfCounts start, int counts) => new(Math.Max(0, start.Value + (counts * HalfCounts.PerCount)) / HalfCounts.PerCount * HalfCounts.PerCount);

    private static AttackerPart Placed(AttackerPart attacker, Routine routine, int number) =>
        attacker with { Bearing = routine.Placements[number].Bearing, Distance = routine.Placements[number].Distance };

    /// <summary>Falls no more often than in the routine, and once.</summary>
    private static AttackerPart Spared(AttackerPart attacker, Routine routine, Book book, int number)
    {
        var falls = routine.Moves.Count(m => m.Attacker == number && m.Reaction is { } reaction && book.Reaction(reaction).Fall != FallClass.None);
        return attacker with { FallsPerRun = Math.Min(20, falls + 1) };
    }

    /// <summary>Everybody goes out; last the one who does so in the routine.</summary>
    private static Ending Ending(Routine routine, Book book)
    {
        var last = routine.Moves.Last(m => m is { Reaction: { } reaction, Attacker: not null } && book.Reaction(reaction).Posture == Posture.Out);
        return new Ending([.. routine.Brief.Attackers.Select(a => a.Name)], routine.Brief.Attackers[last.Attacker!.Value].Name);
    }
}
