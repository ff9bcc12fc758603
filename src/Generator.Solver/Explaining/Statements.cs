using System.Globalization;
using Generator.Domain;
using Generator.Library.Reading;

namespace Generator.Solver.Explaining;

/// <summary>What a brief says that may stand in the way of a routine, statement by statement.</summary>
public static class Statements
{
    /// <summary>So many counts more or fewer are offered as a concession.</summary>
    private static readonly int[] Steps = [.. Enumerable.Range(1, 32)];

    /// <summary>At most 64 statements, those about the whole first.</summary>
    public static IReadOnlyList<Statement> Of(Brief brief) =>
    [
        .. Lengths(brief).Concat(Stories(brief)).Concat(brief.Moments.Select(Moment)).Concat(Endings(brief)).Concat(SafetyOf(brief)).Concat(Floors(brief))
            .Concat(People(brief)).Take(64),
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

    private static string Many(int number, string one) => Number(number) + " " + one + (number == 1 ? string.Empty : "s");

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);

    private static string Counts(HalfCounts span) => span.ToSpanText() + (span.Value == HalfCounts.PerCount ? " count" : " counts");

    private static IEnumerable<Statement> Lengths(Brief brief)
    {
        if (brief.Length is not { } length)
        {
            yield break;
        }

        var unit = length.Counts is null ? "moves" : "counts";
        var asked = length.Counts is { } counts ? Many(counts, "count") : Many(length.Moves ?? 0, "move");
        Brief Longer(Brief b, int by) => b with { Length = new Length(length.Counts + by, length.Counts is null ? length.Moves + by : b.Length?.Moves, length.Tolerance) };
        yield return new Statement(
            $"a length of {asked}, give or take {Number(length.Tolerance)}",
            b => b with { Length = Free(b, length) },
            [.. Steps.Select(s => ($"{Number(s)} more {(s == 1 ? unit[..^1] : unit)}", (Func<Brief, Brief>)(b => Longer(b, s))))]);
        if (length is { Counts: not null, Moves: { } also })
        {
            yield return new Statement(
                Many(also, "move"),
                b => b with { Length = b.Length is { } l ? l with { Moves = null } : null },
                [.. Steps.Select(s => also - (s * Math.Max(1, also / 32))).Where(m => m > 0).Select(m => ($"only {Number(m)} of the {Number(also)} moves", (Func<Brief, Brief>)(b => b with { Length = b.Length is { } l ? l with { Moves = m } : null })))]);
        }

        if (brief.Tempo.CountsPerMinute > 60)
        {
            yield return new Statement(
                $"a tempo of {Number(brief.Tempo.CountsPerMinute)} counts a minute",
                b => b with { Tempo = new Tempo(brief.Tempo.CountsPerMinute > 100 ? 100 : 60) },
                [.. Steps.Select(s => brief.Tempo.CountsPerMinute - (5 * s)).Where(t => t >= 60).Select(t => ($"a tempo of {Number(t)}", (Func<Brief, Brief>)(b => b with { Tempo = new Tempo(t) })))]);
        }
    }

    /// <summary>Any length up to twice what is asked, or what so many attackers may need.</summary>
    private static Length Free(Brief brief, Length length)
    {
        var wanted = length.Counts is { } counts ? Math.Max(counts, 3 * (brief.Length?.Moves ?? 0)) : length.Moves ?? 0;
        var most = Math.Max(wanted, 10 * (brief.Attackers.Count + 1)) + length.Tolerance;
        return length.Counts is null ? new Length(null, most, most - 1) : new Length(most, brief.Length?.Moves, most - 1);
    }

    private static IEnumerable<Statement> Stories(Brief brief)
    {
        // None at all stands in nobody's way but a hero moment's.
        if (brief.Setbacks is { } setbacks && (setbacks > 0 || brief.Moments.Count > 0))
        {
            yield return Wanted(setbacks, "setback", (b, number) => b with { Setbacks = number });
        }

        if (brief.Pauses is { } pauses && (pauses > 0 || brief.Moments.Count > 0))
        {
            yield return Wanted(pauses, "pause", (b, number) => b with { Pauses = number });
        }
    }

    private static Statement Wanted(int asked, string what, Func<Brief, int?, Brief> with) => new(
        asked == 0 ? $"no {what}" : Many(asked, what),
        b => with(b, null),
        asked == 0
            ? [.. Enumerable.Range(1, 4).Select(more => (Many(more, what), (Func<Brief, Brief>)(b => with(b, more))))]
            : [.. Enumerable.Range(1, asked).Select(less => (asked == less ? $"no {what}" : $"only {Number(asked - less)} of the {Number(asked)} {what}s", (Func<Brief, Brief>)(b => with(b, asked - less))))]);

    private static Statement Moment(Moment moment)
    {
        var moves = string.Join(", then ", moment.Moves.Select(m => m.Technique + (m.Attacker is { } who ? $" on {who}" : string.Empty) + (m.WantsNoAttack ? " without an attack" : m.Attack is { } attack ? $" against {attack}" : string.Empty) + (m.Reaction is { } reaction ? $" with {reaction}" : string.Empty)));
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
                : [.. Steps.Select(s => ($"{moves} up to {Many(s, "count")} sooner or later", (Func<Brief, Brief>)(b => With(b, Wider(s)))))]);
    }

    private static IEnumerable<Statement> Endings(Brief brief)
    {
        foreach (var name in brief.Ending?.Out ?? [])
        {
            Brief Left(Brief b) => b with { Ending = b.Ending is { } e ? new Ending([.. e.Out.Where(n => !string.Equals(n, name, StringComparison.Ordinal))], string.Equals(e.Last, name, StringComparison.Ordinal) ? null : e.Last) : null };
            yield return new Statement($"{name} out at the end", Left, [($"{name} may still be standing at the end", Left)]);
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
                $"a margin of {Counts(safety.Margin)}",
                b => b with { Safety = b.Safety with { Margin = HalfCounts.Zero } },
                [.. Enumerable.Range(1, safety.Margin.Value).Select(s => new HalfCounts(safety.Margin.Value - s)).Select(m => ($"a margin of {Counts(m)}", (Func<Brief, Brief>)(b => b with { Safety = b.Safety with { Margin = m } })))]);
        }

        yield return new Statement(
            $"at most {Many(safety.FallsPerDay, "fall")} and {Many(safety.HeadHitsPerDay, "head-height hit")} a day in {Many(safety.Runs, "run")}",
            b => b with { Safety = b.Safety with { FallsPerDay = 1000, HeadHitsPerDay = 5000 } });
    }

    private static IEnumerable<Statement> Floors(Brief brief)
    {
        var floor = brief.Floor;
        if (floor.Width.Value < 800 || floor.Depth.Value < 800)
        {
            yield return new Statement($"a floor of {floor.Width} by {floor.Depth}", b => b with
            {
                Floor = b.Floor with { Width = new Centimetres(2000), Depth = new Centimetres(2000), MarkX = new Centimetres(b.Floor.MarkX.Value + 600), MarkY = new Centimetres(b.Floor.MarkY.Value + 600), Obstacles = [.. b.Floor.Obstacles.Select(o => o with { X = new Centimetres(o.X.Value + 600), Y = new Centimetres(o.Y.Value + 600) })] },
            });
        }

        if (floor.Surface != Surface.Matted)
        {
            yield return new Statement($"a floor that is {EnumWords.Of(floor.Surface)}", b => b with { Floor = b.Floor with { Surface = Surface.Matted } });
        }

        foreach (var obstacle in floor.Obstacles)
        {
            yield return new Statement($"the {obstacle.Name} on the floor", b => b with { Floor = b.Floor with { Obstacles = [.. b.Floor.Obstacles.Where(o => !string.Equals(o.Name, obstacle.Name, StringComparison.Ordinal))] } });
        }
    }

    private static IEnumerable<Statement> People(Brief brief) =>
        Person(brief.Hero, (b, change) => b with { Hero = (HeroPart)change(b.Hero) })
            .Concat(brief.Attackers.SelectMany((a, i) => Placed(a, i).Concat(Person(a, (b, change) => With(b, i, p => (AttackerPart)change(p))))));

    private static Brief With(Brief brief, int index, Func<AttackerPart, AttackerPart> change) =>
        brief with { Attackers = [.. brief.Attackers.Select((a, i) => i == index ? change(a) : a)] };

    private static IEnumerable<Statement> Placed(AttackerPart part, int index)
    {
        if (part.Bearing is not null || part.Distance is not null)
        {
            var where = string.Join(", ", new[] { part.Bearing is { } bearing ? bearing.ToClockText() + " o'clock" : null, part.Distance is { } distance ? distance + " out" : null }.OfType<string>());
            yield return new Statement($"{part.Name} opening at {where}", b => With(b, index, p => p with { Bearing = null, Distance = null }));
        }

        if (part.Entrance is { Value: > 0 } entrance)
        {
            yield return new Statement($"{part.Name} not in before count {entrance.ToCountText()}", b => With(b, index, p => p with { Entrance = null }));
        }

        if (part.Speed < 200)
        {
            yield return new Statement($"{part.Name} coming in at {(part.Speed / 100m).ToString("0.##", CultureInfo.InvariantCulture)} m/s", b => With(b, index, p => p with { Speed = 300 }));
        }
    }

    private static IEnumerable<Statement> Person(Performer person, Func<Brief, Func<Performer, Performer>, Brief> with)
    {
        foreach (var limit in person.Limits)
        {
            yield return new Statement($"{person.Name} with the limit {limit}", b => with(b, p => p with { Limits = [.. p.Limits.Where(l => !string.Equals(l, limit, StringComparison.Ordinal))] }));
        }

        foreach (var garment in person.Wardrobe)
        {
            yield return new Statement($"{person.Name} in {garment}", b => with(b, p => p with { Wardrobe = [.. p.Wardrobe.Where(w => !string.Equals(w, garment, StringComparison.Ordinal))] }));
        }

        if (person.FallsPerRun is { } falls)
        {
            yield return new Statement($"{person.Name} falling at most {Many(falls, "time")} a run", b => with(b, p => p with { FallsPerRun = 20 }));
        }

        if (person.Skill < Skill.Stunt)
        {
            yield return new Statement($"{person.Name} being {EnumWords.Of(person.Skill)}", b => with(b, p => p with { Skill = Skill.Stunt }));
        }
    }
}
