using System.Globalization;
using Generator.Domain;
using Generator.Paperwork.Text;
using Generator.Rules;
using Generator.Rules.Judging;
using Generator.Rules.Replaying;
using Generator.Solver.Alternatives;

namespace Generator.Cli.Changes;

/// <summary>Alternatives side by side, three in a block, a row for each thing in which they differ.</summary>
internal static class AlternativesTable
{
    private const int Label = 12;

    private const int Block = 3;

    /// <summary>The whole table, ending with a line feed.</summary>
    public static string Of(Scene scene, IReadOnlyList<Alternative> found) =>
        string.Concat(Lines(scene, found).Select(l => l + "\n"));

    private static IEnumerable<string> Lines(Scene scene, IReadOnlyList<Alternative> found)
    {
        foreach (var line in Page.Wrap("Alternatives: " + scene.Brief.Title, Page.Width))
        {
            yield return line;
        }

        for (var from = 0; from < found.Count; from += Block)
        {
            yield return Page.Line('=');
            var columns = found.Skip(from).Take(Block).ToList();
            var steps = columns.Select(c => Replay.Of(scene, c.Routine)).ToList();
            var width = ((Page.Width - Label) / columns.Count) - 2;
            foreach (var (name, cells) in Rows(scene, found, columns, steps, from))
            {
                foreach (var line in Page.Row(0, [(name, Label), .. cells.Select(c => (c, width))]))
                {
                    yield return line;
                }
            }
        }

        yield return Page.Line('-');
        foreach (var line in Page.Wrap("All of them pass the audit. A moment's own moves are not counted as different.", Page.Width))
        {
            yield return line;
        }
    }

    private static IEnumerable<(string Name, IReadOnlyList<string> Cells)> Rows(Scene scene, IReadOnlyList<Alternative> all, IReadOnlyList<Alternative> columns, IReadOnlyList<IReadOnlyList<Step>> steps, int from)
    {
        yield return (string.Empty, [.. columns.Select((_, i) => "No. " + Number(from + i + 1))]);
        yield return ("length", [.. steps.Select(s => $"{Number(s.Count)} moves, {Words.Span(new HalfCounts(s[^1].End))}")]);
        yield return ("comes first", [.. columns.Select(c => First(scene, c.Routine))]);
        for (var m = 0; m < scene.Brief.Moments.Count; m++)
        {
            var name = scene.Brief.Moments.Count == 1 ? "moment" : "moment " + Number(m + 1);
            var at = columns.Select(c => c.Shape.Order.First(o => o.Moment == m).First).ToList();
            var last = scene.Brief.Moments[m].Moves.Count - 1;
            yield return (name, [.. columns.Select((c, i) => $"move {Number(at[i] + 1)}, count {c.Routine.Moves[at[i]].Start.ToCountText()}: {Technique(scene, c.Routine, at[i])}")]);
            yield return ("  reached by", [.. columns.Select((c, i) => Technique(scene, c.Routine, at[i] - 1))]);
            yield return ("  left by", [.. columns.Select((c, i) => Technique(scene, c.Routine, at[i] + last + 1))]);
        }

        yield return ("weight", [.. steps.Select(Weight)]);
        yield return ("floor used", [.. steps.Select(Floor)]);
        yield return ("falls", [.. steps.Select(s => Falls(scene, s))]);
        yield return ("out in turn", [.. steps.Select(s => Outs(scene, s))]);
        yield return ("points", [.. columns.Select(c => Points(c.Verdict))]);
        yield return ("differs by", [.. columns.Select(c => Differs(all, c))]);
    }

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);

    private static string First(Scene scene, Routine routine)
    {
        var move = routine.Moves[0];
        return MoveText.Who(scene, move) + (move.Attack is { } attack ? ": " + scene.Book.Attack(attack).Name : string.Empty);
    }

    private static string Technique(Scene scene, Routine routine, int index)
    {
        if (index < 0 || index >= routine.Moves.Count)
        {
            return index < 0 ? "(the start)" : "(the end)";
        }

        var move = routine.Moves[index];
        var done = move.Technique is { } technique ? scene.Book.Technique(technique).Name : "nothing";
        return move.Attacker is null ? done : $"{done} on {MoveText.Who(scene, move)}";
    }

    /// <summary>The heaviest move in each third, and the mean.</summary>
    private static string Weight(IReadOnlyList<Step> steps)
    {
        var weights = steps.Select(s => s.Technique?.Weight ?? 0).ToList();
        var thirds = Enumerable.Range(0, 3).Select(t => weights.Skip(t * weights.Count / 3).Take(Math.Max(1, ((t + 1) * weights.Count / 3) - (t * weights.Count / 3))).DefaultIfEmpty(0).Max());
        return string.Create(CultureInfo.InvariantCulture, $"peaks {string.Join(" ", thirds)}, mean {weights.Average():0.0}");
    }

    private static string Floor(IReadOnlyList<Step> steps)
    {
        var reached = steps.Where(s => s.HasTarget).Select(s => s.After.Attackers[s.Row.Attacker]).ToList();
        if (reached.Count == 0)
        {
            return "the mark";
        }

        var sides = reached.Select(a => a.Bearing / 6).Distinct().Count();
        return $"{sides} of 4 sides, out to {new Centimetres(reached.Max(a => a.Distance))}";
    }

    private static string Falls(Scene scene, IReadOnlyList<Step> steps)
    {
        var hero = steps.Count(s => s.Technique is { HeroFall: not FallClass.None });
        var falls = scene.Brief.Attackers.Select((a, i) => (a.Name, steps[^1].After.Attackers[i].Falls)).Append((scene.Brief.Hero.Name, hero)).Where(f => f.Item2 > 0);
        return string.Join(", ", falls.Select(f => $"{Page.Clean(f.Item1)} {Number(f.Item2)}")) is { Length: > 0 } some ? some : "none";
    }

    private static string Outs(Scene scene, IReadOnlyList<Step> steps)
    {
        var end = steps[^1].After.Attackers;
        var outs = Enumerable.Range(0, scene.Cast).Where(a => end[a].OutAt >= 0).OrderBy(a => end[a].OutAt).Select(a => Page.Clean(scene.Brief.Attackers[a].Name));
        return string.Join(", ", outs) is { Length: > 0 } some ? some : "nobody";
    }

    private static string Points(Verdict verdict)
    {
        var parts = verdict.PointsByRule.Select((p, i) => (Points: p, RuleBook.All[i].Id)).Where(p => p.Points > 0).Select(p => $"{p.Id} {Number(p.Points)}");
        return Number(verdict.Points) + (verdict.Points == 0 ? string.Empty : $": {string.Join(", ", parts)}");
    }

    /// <summary>From the one that is most like it.</summary>
    private static string Differs(IReadOnlyList<Alternative> all, Alternative one)
    {
        if (all.Count < 2)
        {
            return "no other";
        }

        var least = all.Where(o => !ReferenceEquals(o, one)).Min(o => Shape.Difference(o.Shape, one.Shape));
        return least >= 100 ? "every move" : $"at least {Number(least)} %";
    }
}
