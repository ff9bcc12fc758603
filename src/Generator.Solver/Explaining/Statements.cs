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
    /// <summary>So many counts more or fewer are offered as a concession.</summary>
    private static readonly int[] Steps = [.. Enumerable.Range(1, 32)];

    /// <summary>Centimetres from the mark to the edge at which the floor stands in nobody's way.</summary>
    private const int Roomy = 400;

    /// <summary>At most 64 statements, those about the whole first.</summary>
    /// <param name="brief">What is asked for.</param>
    /// <param name="settle">What room people need.</param>
    public static IReadOnlyList<Statement> Of(Brief brief, Settle settle) =>
    [
        .. Lengths(brief).Concat(As(Nearness.Given, TempoOf(brief))).Concat(Stories(brief)).Concat(brief.Moments.Select(Moment)).Concat(Endings(brief))
            .Concat(As(Nearness.Performers, SafetyOf(brief))).Concat(As(Nearness.Given, Crowd(brief, settle).Concat(Floors(brief)))).Concat(People(brief)).Take(64),
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

    private static IEnumerable<Statement> As(Nearness nearness, IEnumerable<Statement> statements) => statements.Select(s => s with { Nearness = nearness });

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);

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
                [.. Steps.Select(s => also * (Steps.Length - s) / Steps.Length).Append(1).Where(m => m > 0 && m < also).Distinct().Select(m => ($"only {Number(m)} of the {Number(also)} moves", (Func<Brief, Brief>)(b => b with { Length = b.Length is { } l ? l with { Moves = m } : null })))]);
        }
    }

    private static string LengthWords(Length length)
    {
        var asked = length.Counts is { } counts ? Amounts.Many(counts, "count") : Amounts.Many(length.Moves ?? 0, "move");
        return length.Tolerance == 0 ? $"a length of exactly {asked}" : $"a length of {asked}, give or take {Number(length.Tolerance)}";
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

    private static IEnumerable<Statement> TempoOf(Brief brief)
    {
        if (brief.Tempo.CountsPerMinute > 60)
        {
            // Passages give way together: lengths go by the fastest of them.
            var easy = brief.Tempo.CountsPerMinute > 100 ? 100 : 60;
            yield return new Statement(
                $"a tempo of {Number(brief.Tempo.CountsPerMinute)} counts a minute",
                b => b.AtTempo(new Tempo(easy)),
                [.. Steps.Select(s => brief.Tempo.CountsPerMinute - (5 * s)).Where(t => t > 60).Append(60).Select(t => ($"a tempo of {Number(t)}", (Func<Brief, Brief>)(b => b.AtTempo(new Tempo(t)))))])
            {
                Instead = $"a tempo of {Number(easy)}",
            };
        }

        if (brief.Music is { Holds.Count: > 0 } music)
        {
            yield return new Statement(Amounts.Many(music.Holds.Count, "hold") + " of the music", b => b with { Music = b.Music! with { Holds = [] } }, []) { Instead = "music without holds" };
        }
    }

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

    /// <summary>How many people there are is in nobody's way but where the floor has no room for them.</summary>
    private static IEnumerable<Statement> Crowd(Brief brief, Settle settle)
    {
        if (Packing.Fits(brief with { Attackers = [.. brief.Attackers.Select(a => a with { Bearing = null, Distance = null })] }, settle))
        {
            yield break;
        }

        // Those stay longest of whom the brief says most.
        var stay = brief.Attackers.Select(a => a.Name).OrderByDescending(n => brief.Moments.Count(m => m.Moves.Any(v => Same(v.Attacker, n))) + (Same(brief.Ending?.Last, n) ? 1 : 0)).ToList();
        for (var number = stay.Count - 1; number > 0; number--)
        {
            var names = stay.Take(number).ToHashSet();
            if (Packing.Fits(Only(brief, names), settle))
            {
                yield return new Statement(Amounts.Many(stay.Count, "attacker"), b => Only(b, names)) { Instead = $"only {Amounts.Many(number, "attacker")}, without {Workings.List([.. stay.Skip(number)])}" };
                yield break;
            }
        }
    }

    /// <summary>The brief with some of its attackers, and without what concerns the others.</summary>
    private static Brief Only(Brief brief, HashSet<string> names) => brief with
    {
        Attackers = [.. brief.Attackers.Where(a => names.Contains(a.Name))],
        Moments = [.. brief.Moments.Where(m => m.Moves.All(v => v.Attacker is null || names.Contains(v.Attacker)))],
        Ending = brief.Ending is { } e ? new Ending([.. e.Out.Where(names.Contains)], e.Last is { } last && names.Contains(last) ? last : null) : null,
    };

    private static bool Same(string? one, string? other) => string.Equals(one, other, StringComparison.Ordinal);

    private static IEnumerable<Statement> Floors(Brief brief)
    {
        var floor = brief.Floor;
        if (Math.Min(Math.Min(floor.MarkX.Value, floor.Width.Value - floor.MarkX.Value), Math.Min(floor.MarkY.Value, floor.Depth.Value - floor.MarkY.Value)) < Roomy)
        {
            var isMiddle = 2 * floor.MarkX.Value == floor.Width.Value && 2 * floor.MarkY.Value == floor.Depth.Value;
            var most = Math.Min(6, ((int)Measures.FloorSide.Most - (Math.Max(floor.Width.Value, floor.Depth.Value) / 100)) / 2);
            yield return new Statement(
                $"a floor of {floor.Width} by {floor.Depth}{(isMiddle ? string.Empty : $" with the mark at {floor.MarkX}, {floor.MarkY}")}",
                b => Larger(b, 100 * most),
                [.. Steps.Take(most - 1).Select(s => (LargerWords(s), (Func<Brief, Brief>)(b => Larger(b, 100 * s))))])
            {
                Instead = LargerWords(most),
            };
        }

        foreach (var camera in brief.Cameras.Where(c => c.IsOnTheGround))
        {
            yield return new Statement($"camera {camera.Name} {camera.Distance} out at {camera.Bearing.ToClockText()} o'clock", b => b with { Cameras = [.. b.Cameras.Where(c => !Same(c.Name, camera.Name))] });
        }

        if (floor.Surface != Surface.Matted)
        {
            yield return new Statement($"a floor that is {EnumWords.Of(floor.Surface)}", b => b with { Floor = b.Floor with { Surface = Surface.Matted } }) { Instead = $"a floor that is {EnumWords.Of(Surface.Matted)}" };
        }

        foreach (var obstacle in floor.Obstacles)
        {
            yield return new Statement($"the {obstacle.Name} on the floor", b => b with { Floor = b.Floor with { Obstacles = [.. b.Floor.Obstacles.Where(o => !string.Equals(o.Name, obstacle.Name, StringComparison.Ordinal))] } });
        }
    }

    private static string LargerWords(int metres) => Amounts.Many(metres, "more metre") + " of floor on every side";

    /// <summary>So much more floor on every side, with everything where it was; ways in stay at the edge or as far from it.</summary>
    private static Brief Larger(Brief brief, int by)
    {
        var floor = brief.Floor;
        Centimetres Plus(Centimetres length, int more) => new(length.Value + more);
        Centimetres Outwards(Centimetres place, Centimetres side) => Plus(place, place <= new Centimetres(0) ? 0 : place >= side ? 2 * by : by);
        return brief with
        {
            Floor = floor with
            {
                Width = Plus(floor.Width, 2 * by),
                Depth = Plus(floor.Depth, 2 * by),
                MarkX = Plus(floor.MarkX, by),
                MarkY = Plus(floor.MarkY, by),
                Obstacles = [.. floor.Obstacles.Select(o => o with { X = Plus(o.X, by), Y = Plus(o.Y, by) })],
                WaysIn = [.. floor.WaysIn.Select(w => w with { X = Outwards(w.X, floor.Width), Y = Outwards(w.Y, floor.Depth) })],
            },
        };
    }

    private static IEnumerable<Statement> People(Brief brief) =>
        As(Nearness.Performers, Person(brief.Hero, (b, change) => b with { Hero = (HeroPart)change(b.Hero) }))
            .Concat(brief.Attackers.SelectMany(a => Placed(a).Concat(As(Nearness.Performers, Person(a, (b, change) => With(b, a.Name, p => (AttackerPart)change(p)))))));

    private static Brief With(Brief brief, string name, Func<AttackerPart, AttackerPart> change) =>
        brief with { Attackers = [.. brief.Attackers.Select(a => Same(a.Name, name) ? change(a) : a)] };

    private static IEnumerable<Statement> Placed(AttackerPart part)
    {
        if (part.Bearing is not null || part.Distance is not null)
        {
            var where = string.Join(", ", new[] { part.Bearing is { } bearing ? bearing.ToClockText() + " o'clock" : null, part.Distance is { } distance ? distance + " out" : null }.OfType<string>());
            yield return new Statement($"{part.Name} opening at {where}", b => With(b, part.Name, p => p with { Bearing = null, Distance = null }));
        }

        if (part.Entrance is { Value: > 0 } entrance)
        {
            yield return new Statement(
                $"{part.Name} not in play before count {entrance.ToCountText()}",
                b => With(b, part.Name, p => p with { Entrance = null }),
                [.. Steps.Select(s => entrance.Value - (HalfCounts.PerCount * s)).TakeWhile(e => e >= 0).Select(e => new HalfCounts(e)).Select(e => ($"{part.Name} in at count {e.ToCountText()}", (Func<Brief, Brief>)(b => With(b, part.Name, p => p with { Entrance = e }))))]);
        }

        if (part.Speed < 200)
        {
            yield return new Statement($"{part.Name} moving at {(part.Speed / 100m).ToString("0.##", CultureInfo.InvariantCulture)} m/s", b => With(b, part.Name, p => p with { Speed = 300 })) { Nearness = Nearness.Performers, Instead = $"{part.Name} coming in at 3 m/s" };
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
            var most = (int)Measures.FallsPerRun.Most;
            yield return new Statement(
                falls == 0 ? $"{person.Name} never falling" : $"{person.Name} falling at most {Amounts.Many(falls, "time")} a run",
                b => with(b, p => p with { FallsPerRun = most }),
                [.. Steps.Take(most - falls).Select(s => ($"{person.Name} falling up to {Amounts.Many(falls + s, "time")} a run", (Func<Brief, Brief>)(b => with(b, p => p with { FallsPerRun = falls + s }))))])
            {
                Instead = $"{person.Name} falling up to {Amounts.Many(most, "time")} a run",
            };
        }

        if (person.Skill < Skill.Stunt)
        {
            yield return new Statement(
                $"{person.Name} being {EnumWords.Of(person.Skill)}",
                b => with(b, p => p with { Skill = Skill.Stunt }),
                [.. Enum.GetValues<Skill>().Where(s => s > person.Skill && s < Skill.Stunt).Order().Select(s => ($"{person.Name} being {EnumWords.Of(s)}", (Func<Brief, Brief>)(b => with(b, p => p with { Skill = s }))))])
            {
                Instead = $"{person.Name} being {EnumWords.Of(Skill.Stunt)}",
            };
        }
    }
}
