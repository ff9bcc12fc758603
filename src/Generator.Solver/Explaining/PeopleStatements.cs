using System.Globalization;
using Generator.Domain;
using Generator.Library;
using Generator.Library.Files;
using Generator.Library.Reading;

namespace Generator.Solver.Explaining;

/// <summary>What a brief says of the performers, one by one.</summary>
internal static class PeopleStatements
{
    public static IEnumerable<Statement> Of(Brief brief) =>
        Person(brief.Hero, (b, change) => b with { Hero = (HeroPart)change(b.Hero) })
            .Concat(brief.Attackers.SelectMany(a => Placed(a).Concat(Person(a, (b, change) => With(b, a.Name, p => (AttackerPart)change(p))))));

    private static Brief With(Brief brief, string name, Func<AttackerPart, AttackerPart> change) =>
        brief with { Attackers = [.. brief.Attackers.Select(a => string.Equals(a.Name, name, StringComparison.Ordinal) ? change(a) : a)] };

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
                [.. Statements.Steps.Select(s => entrance.Value - (HalfCounts.PerCount * s)).TakeWhile(e => e >= 0).Select(e => new HalfCounts(e)).Select(e => ($"{part.Name} in at count {e.ToCountText()}", (Func<Brief, Brief>)(b => With(b, part.Name, p => p with { Entrance = e }))))]);
        }

        if (part.Speed < 200)
        {
            yield return new Statement($"{part.Name} moving at {(part.Speed / 100m).ToString("0.##", CultureInfo.InvariantCulture)} m/s", b => With(b, part.Name, p => p with { Speed = 300 })) { Nearness = Nearness.Performers, Instead = $"{part.Name} coming in at 3 m/s" };
        }
    }

    private static IEnumerable<Statement> Person(Performer person, Func<Brief, Func<Performer, Performer>, Brief> with) => Said(person, with).Select(s => s with { Nearness = Nearness.Performers });

    private static IEnumerable<Statement> Said(Performer person, Func<Brief, Func<Performer, Performer>, Brief> with)
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
                [.. Statements.Steps.Take(most - falls).Select(s => ($"{person.Name} falling up to {Amounts.Many(falls + s, "time")} a run", (Func<Brief, Brief>)(b => with(b, p => p with { FallsPerRun = falls + s }))))])
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
