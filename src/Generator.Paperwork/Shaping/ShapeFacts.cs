using Generator.Paperwork.Text;
using Generator.Rules.Shapes;

namespace Generator.Paperwork.Shaping;

/// <summary>Measures that no rough rule judges by themselves, a line each.</summary>
internal static class ShapeFacts
{
    public static IEnumerable<(string Name, string Text)> Of(FightShape shape)
    {
        yield return ("exchanges", $"{Words.Number(shape.Exchanges.Count)}; by their moves {Lengths(shape)}");
        yield return ("contacts", $"{Words.Number(shape.Contacts.Count)}, {PerMinute(shape, shape.Contacts.Count)} a minute; by thirds of the fight {string.Join(", ", shape.Intensity.Thirds.Select(Words.Number))}");
        yield return ("gaps", shape.Intervals.Npvi is { } npvi
            ? $"nPVI {Words.Number(decimal.Round(npvi, 1))} (0 is a clock, above 100 very uneven); {Words.Number(shape.Intervals.EqualPairs)} of {Words.Number(shape.Intervals.Pairs)} neighbours equal"
            : "too few contacts");
        yield return ("flurries, rests", $"{Words.Many(shape.Flurries.Count, "flurry")}, {Words.Many(Flurry.RestsIn(shape.Intervals), "rest")} of 2½ counts and more");
        yield return ("attacks", $"{Words.Number(shape.Attacks)}, {PerMinute(shape, shape.Attacks)} a minute; {Words.Number(shape.ForNothing.Unseen.Count)} from out of sight");
        if (shape.Combinations.Count > 0)
        {
            yield return ("combinations", string.Join(", ", shape.Combinations.GroupBy(c => c.Attacker).OrderBy(g => g.Key).Select(g =>
                $"{shape.Scene.Brief.Attackers[g.Key].Name}: {string.Join(" and ", g.Select(c => $"{c.Combination.Name} (move {Words.Number(c.First)})"))}")));
        }

        yield return ("manners", $"attacker and kind of attack share {Bits(shape.Manners.Bits)} bits, shuffled {Bits(shape.Manners.Shuffled)} (z {Words.Number(Math.Round((decimal)shape.Manners.Score, 1))})");
        yield return ("levels", $"hits high {Words.Number(shape.Levels.High)}, middle {Words.Number(shape.Levels.Middle)}, low {Words.Number(shape.Levels.Low)}");
        yield return ("sides", $"hits with the left {Words.Number(shape.Levels.Left)}, the right {Words.Number(shape.Levels.Right)}");
        yield return ("floor", $"{Words.Number(shape.Areas.Used)} of {Words.Number(Areas.All)} areas (three across, three deep); ways of all together {Words.Number(decimal.Round(shape.Wears.Sum(w => w.Way) / 100m, 1))} m");
        yield return ("variety", $"{Words.Number(shape.Returns.Techniques)} techniques in {Words.Many(shape.Returns.Uses, "move")}; {Words.Many(shape.Returns.Runs, "pair")} of neighbours come again in the same order");
    }

    private static string Lengths(FightShape shape) =>
        string.Join(", ", shape.Exchanges.GroupBy(e => Math.Min(5, e.Moves)).OrderBy(g => g.Key).Select(g => $"{(g.Key == 5 ? "5 and more" : Words.Number(g.Key))}: {Words.Number(g.Count())}"));

    private static string PerMinute(FightShape shape, int number) => shape.Seconds == 0 ? "0" : Words.Number(decimal.Round(number * 60 / shape.Seconds, 0));

    private static string Bits(double bits) => Words.Number(Math.Round((decimal)bits, 2));
}
