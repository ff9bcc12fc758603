using Generator.Domain;
using Generator.Library;
using Generator.Library.Files;
using Generator.Library.Reading;

namespace Generator.Solver.Explaining;

/// <summary>What a brief says of length, tempo and music.</summary>
internal static class LengthStatements
{
    public static IEnumerable<Statement> Of(Brief brief) => Lengths(brief).Concat(Music(brief).Select(s => s with { Nearness = Nearness.Given }));

    private static IEnumerable<Statement> Lengths(Brief brief)
    {
        if (brief.Length is not { } length)
        {
            yield break;
        }

        // Without counts as many moves may last as long as they like; without either any length will do.
        var unit = length.Counts is null ? "move" : "count";
        var asked = (length.Counts ?? length.Moves) ?? 0;
        var free = Free(brief, length);
        Brief Of(Brief b, Length l) => b with { Length = length.Counts is null ? l : l with { Moves = b.Length?.Moves } };
        Brief Unlimited(Brief b) => b with { Length = length.Counts is not null && b.Length?.Moves is { } m ? new Length(null, m, Generator.Rules.Rules.Length.MovesTolerance(length)) : free };
        yield return new Statement(
            LengthWords(length),
            Unlimited,
            [.. Enumerable.Range(1, Math.Max(0, ((free.Counts ?? free.Moves) ?? 0) - asked)).Select(s => ($"{Amounts.Many(s, $"more {unit}")}", (Func<Brief, Brief>)(b => Of(b, length with { Counts = length.Counts + s, Moves = length.Moves + s }))))])
        {
            Instead = LengthWords(Unlimited(brief).Length!),
        };
        if (length is { Counts: not null, Moves: { } also })
        {
            yield return new Statement(
                Amounts.Many(also, "move"),
                b => b with { Length = b.Length is { Counts: not null } l ? l with { Moves = null } : free },
                [.. Statements.Steps.Select(s => also * (Statements.Steps.Length - s) / Statements.Steps.Length).Append(1).Where(m => m > 0 && m < also).Distinct().Select(m => ($"only {Statements.Number(m)} of the {Statements.Number(also)} moves", (Func<Brief, Brief>)(b => b with { Length = b.Length is { } l ? l with { Moves = m } : null })))]);
        }
    }

    private static string LengthWords(Length length)
    {
        var asked = length.Counts is { } counts ? Amounts.Many(counts, "count") : Amounts.Many(length.Moves ?? 0, "move");
        return length.Tolerance == 0 ? $"a length of exactly {asked}" : $"a length of {asked}, give or take {Statements.Number(length.Tolerance)}";
    }

    /// <summary>Any length up to twice what is asked, or what so many attackers and moves may need, as far as a brief can say it.</summary>
    private static Length Free(Brief brief, Length length)
    {
        var people = 10 * (brief.Attackers.Count + 1);
        if (length.Counts is { } counts)
        {
            var longest = Within(Measures.Counts, Math.Max(Math.Max(counts, 3 * (length.Moves ?? 0)), people) + length.Tolerance);
            return new Length(longest, null, Within(Measures.Tolerance, longest - 1));
        }

        var most = Within(Measures.Moves, Math.Max(length.Moves ?? 0, people) + length.Tolerance);
        return new Length(null, most, Within(Measures.Tolerance, most - 1));
    }

    /// <summary>A number, or the nearest to it that a brief can say.</summary>
    private static int Within(Quantity quantity, int number) => (int)Math.Clamp(number, quantity.Least, quantity.Most);

    private static IEnumerable<Statement> Music(Brief brief)
    {
        if (brief.Tempo.CountsPerMinute > 60)
        {
            // Passages give way together: lengths go by the fastest of them.
            var easy = brief.Tempo.CountsPerMinute > 100 ? 100 : 60;
            yield return new Statement(
                $"a tempo of {Statements.Number(brief.Tempo.CountsPerMinute)} counts a minute",
                b => b.AtTempo(new Tempo(easy)),
                [.. Statements.Steps.Select(s => brief.Tempo.CountsPerMinute - (5 * s)).Where(t => t > 60).Append(60).Select(t => ($"a tempo of {Statements.Number(t)}", (Func<Brief, Brief>)(b => b.AtTempo(new Tempo(t)))))])
            {
                Instead = $"a tempo of {Statements.Number(easy)}",
            };
        }

        if (brief.Music is { Holds.Count: > 0 } music)
        {
            yield return new Statement(Amounts.Many(music.Holds.Count, "hold") + " of the music", b => b with { Music = b.Music! with { Holds = [] } }, []) { Instead = "music without holds" };
        }
    }
}
