using Generator.Domain;
using Generator.Library;
using Generator.Library.Files;
using Generator.Library.Reading;
using Generator.Solver.Refuting;

namespace Generator.Solver.Explaining;

/// <summary>What a brief says of the floor and of how many are on it.</summary>
internal static class FloorStatements
{
    /// <summary>Centimetres from the mark to the edge at which the floor stands in nobody's way.</summary>
    private const int Roomy = 400;

    /// <param name="brief">What is asked for.</param>
    /// <param name="settle">What room people need.</param>
    public static IEnumerable<Statement> Of(Brief brief, Settle settle) => Crowd(brief, settle).Concat(Floors(brief)).Concat(Marks(brief));

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
                [.. Statements.Steps.Take(most - 1).Select(s => (LargerWords(s), (Func<Brief, Brief>)(b => Larger(b, 100 * s))))])
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
            yield return new Statement($"{obstacle.InWords} on the floor", b => b with { Floor = b.Floor with { Obstacles = [.. b.Floor.Obstacles.Where(o => !Same(o.Name, obstacle.Name))] } });
        }
    }

    /// <summary>A mark left out; where the fight begins stays.</summary>
    private static IEnumerable<Statement> Marks(Brief brief) => (brief.Travels ? brief.Marks.Skip(1) : [])
        .Select(m => new Statement($"the mark {m.Name} at {m.X}, {m.Y}", b => b.Marks.Where(o => !Same(o.Name, m.Name)).ToList() is { Count: > 1 } left ? b with { Marks = left } : b with { Marks = [] }) { Instead = $"the fight without the mark {m.Name}" });

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
            Marks = [.. brief.Marks.Select(m => m with { X = Plus(m.X, by), Y = Plus(m.Y, by) })],
            Props = [.. brief.Props.Select(p => p.With is null ? p with { X = Plus(p.X, by), Y = Plus(p.Y, by) } : p)],
        };
    }
}
