using Generator.Domain;
using Generator.Library;
using Generator.Rules;
using Generator.Rules.Judging;
using Generator.Testing;

namespace Generator.Solver.Tests.Refuting;

/// <summary>Briefs made as strict as a routine just bears: less skill, limits and wardrobe, a harder floor with less room, a wider margin.</summary>
internal static class Strictest
{
    /// <summary>The brief with one demand after the other made stricter, in an order drawn by chance, as long as the audit finds nothing unsafe or broken in the routine.</summary>
    public static Brief For(Routine routine, Brief brief, Book book, Chance chance)
    {
        foreach (var stricter in Ways(brief, book).OrderBy(_ => chance.Whole(0, 1000)).Take(24).ToList())
        {
            var next = stricter(brief);
            brief = Audit.Of(new Scene(next, book), routine with { Brief = next }).IsClean ? next : brief;
        }

        return brief;
    }

    private static IEnumerable<Func<Brief, Brief>> Ways(Brief brief, Book book)
    {
        foreach (var surface in Enum.GetValues<Surface>())
        {
            yield return b => b with { Floor = b.Floor with { Surface = surface } };
        }

        foreach (var less in (int[])[10, 30, 100])
        {
            yield return b => b with { Floor = b.Floor with { Width = new(Math.Max(100, b.Floor.Width.Value - less)) } };
            yield return b => b with { Floor = b.Floor with { Depth = new(Math.Max(100, b.Floor.Depth.Value - less)) } };
            yield return b => b with { Floor = Shifted(b.Floor, less, 0) };
            yield return b => b with { Floor = Shifted(b.Floor, 0, less) };
        }

        foreach (var more in (int[])[1, 2, 4])
        {
            yield return b => b with { Safety = b.Safety with { Margin = new(b.Safety.Margin.Value + more) } };
            yield return b => b with { Safety = b.Safety with { FallsPerDay = b.Safety.FallsPerDay / (more + 1), HeadHitsPerDay = b.Safety.HeadHitsPerDay / (more + 1) } };
        }

        IEnumerable<Func<Performer, Performer>> people =
        [
            .. Enum.GetValues<Skill>().Select(s => (Func<Performer, Performer>)(p => p with { Skill = s < p.Skill ? s : p.Skill })),
            .. Limit.All.Select(l => (Func<Performer, Performer>)(p => p with { Limits = [.. p.Limits.Append(l).Distinct()] })),
            .. book.Settle.Wardrobe.Keys.Select(w => (Func<Performer, Performer>)(p => p with { Wardrobe = [.. p.Wardrobe.Append(w).Distinct()] })),
            .. Enumerable.Range(0, 3).Select(f => (Func<Performer, Performer>)(p => p with { FallsPerRun = Math.Min(f, p.FallsPerRun ?? f) })),
        ];
        foreach (var change in people)
        {
            yield return b => b with { Hero = (HeroPart)change(b.Hero) };
            for (var a = 0; a < brief.Attackers.Count; a++)
            {
                var who = a;
                yield return b => b with { Attackers = [.. b.Attackers.Select((p, i) => i == who ? (AttackerPart)change(p) : p)] };
            }
        }
    }

    /// <summary>Less floor on the sides from which places are measured.</summary>
    private static FloorPlan Shifted(FloorPlan floor, int x, int y) => floor with
    {
        Width = new(Math.Max(100, floor.Width.Value - x)),
        Depth = new(Math.Max(100, floor.Depth.Value - y)),
        MarkX = new(Math.Max(0, floor.MarkX.Value - x)),
        MarkY = new(Math.Max(0, floor.MarkY.Value - y)),
        Obstacles = [.. floor.Obstacles.Select(o => o with { X = new(o.X.Value - x), Y = new(o.Y.Value - y) })],
        WaysIn = [],
    };
}
