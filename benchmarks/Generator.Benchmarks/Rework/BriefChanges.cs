using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Replaying;

namespace Generator.Benchmarks.Rework;

/// <summary>What happens to a brief after the routine was taught, one kind after another.</summary>
internal static class BriefChanges
{
    public static IReadOnlyList<string> Kinds { get; } = ["injured", "one less", "replaced", "smaller floor", "obstacle", "shorter", "longer", "slower"];

    /// <summary>The changed brief.</summary>
    /// <param name="scene">The routine's brief and the library.</param>
    /// <param name="routine">The routine as taught.</param>
    /// <param name="kind">Position among the kinds.</param>
    public static Brief Of(Scene scene, Routine routine, int kind)
    {
        var brief = scene.Brief;
        var steps = Replay.Of(scene, routine);
        var length = brief.Length!;
        return Kinds[kind] switch
        {
            "injured" => Injured(brief, MostFalls(steps)),
            "one less" => brief with
            {
                Attackers = [.. brief.Attackers.SkipLast(1)],
                Ending = null,
                Length = new Length(null, routine.Moves.Count(m => m.Attacker != brief.Attackers.Count - 1), 4),
            },
            "replaced" => Renamed(brief, 3, "Odile", new Centimetres(158)),
            "smaller floor" => brief with { Floor = Smaller(brief.Floor) },
            "obstacle" => brief with { Floor = brief.Floor with { Obstacles = [.. brief.Floor.Obstacles, InTheWay(scene, steps)] } },
            "shorter" => brief with { Length = new Length(length.Counts - 10, length.Moves - 5, length.Tolerance) },
            "longer" => brief with { Length = new Length(length.Counts + 10, length.Moves + 5, length.Tolerance) },
            _ => brief with { Tempo = new Tempo(brief.Tempo.CountsPerMinute - 15) },
        };
    }

    private static Brief With(Brief brief, int attacker, Func<AttackerPart, AttackerPart> change) =>
        brief with { Attackers = [.. brief.Attackers.Select((a, i) => i == attacker ? change(a) : a)] };

    private static Brief Injured(Brief brief, (int Attacker, FallClass Fall) hurt) =>
        With(brief, hurt.Attacker, a => a with { Limits = [.. a.Limits, Limit.On(hurt.Fall)] });

    private static Brief Renamed(Brief brief, int attacker, string name, Centimetres height)
    {
        var was = brief.Attackers[attacker].Name;
        string New(string old) => string.Equals(old, was, StringComparison.Ordinal) ? name : old;
        var ending = brief.Ending is { } e ? new Ending([.. e.Out.Select(New)], e.Last is null ? null : New(e.Last)) : null;
        return With(brief, attacker, a => a with { Name = name, Height = height }) with { Ending = ending };
    }

    private static FloorPlan Smaller(FloorPlan floor)
    {
        const int Side = 200;
        return floor with
        {
            Width = new Centimetres(floor.Width.Value - Side),
            Depth = new Centimetres(floor.Depth.Value - Side),
            MarkX = new Centimetres(floor.MarkX.Value - (Side / 2)),
            MarkY = new Centimetres(floor.MarkY.Value - (Side / 2)),
        };
    }

    /// <summary>The attacker and the kind of fall that there is most of.</summary>
    private static (int Attacker, FallClass Fall) MostFalls(IReadOnlyList<Step> steps) => steps
        .Where(s => s.HasTarget && s.Reaction is { Fall: not FallClass.None })
        .GroupBy(s => (s.Row.Attacker, s.Reaction!.Fall))
        .OrderByDescending(g => g.Count()).ThenBy(g => g.Key)
        .First().Key;

    /// <summary>
    /// A crate where somebody ends in the middle of the routine, as far from the mark as anybody does there, but not where the brief has somebody
    /// open: no routine could answer that.
    /// </summary>
    private static Obstacle InTheWay(Scene scene, IReadOnlyList<Step> steps) => steps.Skip(steps.Count / 3).Take(steps.Count / 3).Where(s => s.HasTarget)
        .Select(s => s.After.Attackers[s.Row.Attacker]).OrderByDescending(a => a.Distance).Select(a => Crate(scene.Brief.Floor, a)).First(o => LeavesOpenings(scene, o));

    private static bool LeavesOpenings(Scene scene, Obstacle crate)
    {
        var brief = scene.Brief with { Floor = scene.Brief.Floor with { Obstacles = [.. scene.Brief.Floor.Obstacles, crate] } };
        var floor = new Scene(brief, scene.Book).Floor;
        return brief.Attackers.All(a => a.Bearing is not { } bearing || a.Distance is not { } distance || floor[bearing.HalfHours] >= distance.Value);
    }

    private static Obstacle Crate(FloorPlan floor, AttackerState place)
    {
        const int Side = 60;
        var angle = place.Bearing * Math.PI / 12;
        return new Obstacle(
            "crate",
            new Centimetres(floor.MarkX.Value + (int)(place.Distance * Math.Sin(angle)) - (Side / 2)),
            new Centimetres(floor.MarkY.Value + (int)(place.Distance * Math.Cos(angle)) - (Side / 2)),
            new Centimetres(Side),
            new Centimetres(Side));
    }
}
