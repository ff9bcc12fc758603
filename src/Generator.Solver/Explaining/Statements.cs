using System.Globalization;
using Generator.Domain;
using Generator.Library;
using Generator.Library.Files;
using Generator.Library.Reading;
using Generator.Solver.Refuting;

namespace Generator.Solver.Explaining;

/// <summary>What a brief says that may stand in the way of a routine, statement by statement.</summary>
public static class Statements
{
    /// <summary>So many counts, metres, falls more or fewer are offered as a concession.</summary>
    internal static readonly int[] Steps = [.. Enumerable.Range(1, 32)];

    /// <summary>At most 64 statements, those about the whole first.</summary>
    /// <param name="brief">What is asked for.</param>
    /// <param name="settle">What room people need.</param>
    public static IReadOnlyList<Statement> Of(Brief brief, Settle settle) =>
    [
        .. LengthStatements.Of(brief).Concat(Stories(brief)).Concat(brief.Moments.Select(Moment)).Concat(Endings(brief)).Concat(SafetyOf(brief).Select(s => s with { Nearness = Nearness.Performers }))
            .Concat(FloorStatements.Of(brief, settle).Select(s => s with { Nearness = Nearness.Given })).Concat(PeopleStatements.Of(brief)).Take(64),
    ];

    /// <summary>The brief with only some of its statements, given as bits.</summary>
    public static Brief Keep(Brief brief, IReadOnlyList<Statement> statements, ulong kept)
    {
        for (var i = 0; i < statements.Count; i++)
        {
            brief = (kept & (1UL << i)) != 0 ? brief : statements[i].Without(brief);
        }

        return brief;
    }

    internal static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);

    private static IEnumerable<Statement> Stories(Brief brief)
    {
        if (brief.Setbacks is { } setbacks)
        {
            yield return Wanted(setbacks, "setback", (b, number) => b with { Setbacks = number });
        }

        if (brief.Pauses is { } pauses)
        {
            yield return Wanted(pauses, "pause", (b, number) => b with { Pauses = number });
        }

        for (var i = 0; i < brief.Acts?.Count; i++)
        {
            if (brief.Acts[i].Hurts is { } hurts)
            {
                var act = i;
                yield return new Statement(
                    $"a setback of act {Number(act + 1)} that hurts the {hurts.PartInWords} until count {hurts.Until.ToCountText()}",
                    b => b with { Acts = b.Acts?.Select((a, at) => at == act ? a with { Hurts = null } : a).ToList() },
                    []);
            }
        }
    }

    private static Statement Wanted(int asked, string what, Func<Brief, int?, Brief> with) => new(
        asked == 0 ? $"no {what}" : Amounts.Many(asked, what),
        b => with(b, null),
        asked == 0
            ? [.. Enumerable.Range(1, 4).Select(more => (Amounts.Many(more, what), (Func<Brief, Brief>)(b => with(b, more))))]
            : [.. Enumerable.Range(1, asked).Select(less => (asked == less ? $"no {what}" : $"only {Number(asked - less)} of the {Number(asked)} {what}s", (Func<Brief, Brief>)(b => with(b, asked - less))))]);

    private static Statement Moment(Moment moment)
    {
        var moves = WantedMoment.NameOf(moment);
        var when = (moment.Earliest, moment.Latest) switch
        {
            ({ } from, { } to) when from == to => $" starting at count {from.ToCountText()}",
            ({ } from, { } to) => $" starting between counts {from.ToCountText()} and {to.ToCountText()}",
            ({ } from, null) => $" starting from count {from.ToCountText()} on",
            (null, { } to) => $" starting by count {to.ToCountText()}",
            _ => string.Empty,
        };
        Brief With(Brief b, Moment other) => b with { Moments = [.. b.Moments.Select(m => ReferenceEquals(m, moment) ? other : m)] };
        Moment Wider(int by) => moment with { Earliest = moment.Earliest is { } e ? new HalfCounts(Math.Max(0, e.Value - (2 * by))) : null, Latest = moment.Latest is { } l ? new HalfCounts(l.Value + (2 * by)) : null };
        return new Statement(
            $"the hero moment {moves}{when}",
            b => b with { Moments = [.. b.Moments.Where(m => !ReferenceEquals(m, moment))] },
            moment.Earliest is null && moment.Latest is null
                ? []
                : [.. Steps.Select(s => ($"{moves} up to {Amounts.Many(s, "count")} sooner or later", (Func<Brief, Brief>)(b => With(b, Wider(s)))))]);
    }

    private static IEnumerable<Statement> Endings(Brief brief)
    {
        foreach (var name in brief.Ending?.Out ?? [])
        {
            Brief Left(Brief b) => b with { Ending = b.Ending is { } e ? new Ending([.. e.Out.Where(n => !string.Equals(n, name, StringComparison.Ordinal))], string.Equals(e.Last, name, StringComparison.Ordinal) ? null : e.Last) : null };
            yield return new Statement($"{name} out at the end", Left) { Instead = $"{name} may still be standing at the end" };
        }

        if (brief.Ending?.Last is { } last)
        {
            yield return new Statement($"{last} out last", b => b with { Ending = b.Ending is { } e ? e with { Last = null } : null });
        }
    }

    private static IEnumerable<Statement> SafetyOf(Brief brief)
    {
        var safety = brief.Safety;
        if (safety.Margin > HalfCounts.Zero)
        {
            yield return new Statement(
                $"a margin of {safety.Margin.InWords}",
                b => b with { Safety = b.Safety with { Margin = HalfCounts.Zero } },
                [.. Enumerable.Range(1, safety.Margin.Value).Select(s => new HalfCounts(safety.Margin.Value - s)).Select(m => ($"a margin of {m.InWords}", (Func<Brief, Brief>)(b => b with { Safety = b.Safety with { Margin = m } })))])
            {
                Instead = $"a margin of {HalfCounts.Zero.InWords}",
            };
        }

        yield return Capped("fall", safety.FallsPerDay, Measures.FallsPerDay, safety.Runs, (s, most) => s with { FallsPerDay = most });
        yield return Capped("head-height hit", safety.HeadHitsPerDay, Measures.HeadHitsPerDay, safety.Runs, (s, most) => s with { HeadHitsPerDay = most });
    }

    private static Statement Capped(string what, int cap, Quantity range, int runs, Func<Safety, int, Safety> with)
    {
        var most = (int)range.Most;
        string Words(int number) => $"{Amounts.Many(number, what)} a day in {Amounts.Many(runs, "run")}";
        Func<Brief, Brief> With(int number) => b => b with { Safety = with(b.Safety, number) };
        return new Statement("at most " + Words(cap), With(most), [.. Steps.Take(8).Select(s => cap + (s * runs)).Where(m => m <= most).Select(m => (Words(m), With(m)))]) { Instead = Words(most) };
    }
}
