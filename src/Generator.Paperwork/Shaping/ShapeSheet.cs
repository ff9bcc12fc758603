using Generator.Domain;
using Generator.Paperwork.Text;
using Generator.Rules.Shapes;

namespace Generator.Paperwork.Shaping;

/// <summary>The shape of a fight: how it runs, each rough rule's figures beside their bands, and what would lift it.</summary>
public static class ShapeSheet
{
    public const string Caution =
        "A shape is a matter of taste: the bands are common practice. A fight outside them may be a good one, and one within them is neither safe nor cleared by that.";

    private const int BarWidth = 34;

    /// <summary>The sheet as plain text of fixed width, ending with a line feed; <see cref="PaperHead.Above"/> puts the head over it.</summary>
    public static string Of(FightShape shape) => Block.TextOf(Blocks(shape));

    /// <summary>What it says, piece by piece.</summary>
    public static IEnumerable<Block> Blocks(FightShape shape)
    {
        var figures = Rules.Shapes.Figures.Of(shape);
        return
        [
            Block.Title("Shape: " + shape.Scene.Brief.Title),
            Block.Prose(Sum(shape, figures)),
            Block.Rule,
            Block.Caution(Cautions.Sheet),
            Block.Prose(Caution),
            Block.Gap,
            Block.Heading("Over time, every four counts"),
            Block.Columns(("count", 5), ("contacts", 8), ("weight", BarWidth), ("on top at its end", 20)),
            .. shape.Intensity.Weight.Select((w, i) => Block.Row((Count(i * Intensity.Stretch), 5), (Words.Number(shape.Intensity.Contacts[i]), 8), ($"{new string('#', Math.Min(w, BarWidth - 4))} {Words.Number(w)}", BarWidth), (Top(shape, i), 20))),
            Block.Gap,
            .. shape.Setbacks.Select(s => Block.Item("  ", $"Setback at move {Words.Number(s.Move)}, count {Count(s.Time)}, {Words.Number(shape.PercentAt(s.Time))} % of the fight: costs {new HalfCounts(s.Cost).InWords}{(s.Beaten is { } beaten ? $"; its attack is beaten at move {Words.Number(beaten)}" : string.Empty)}.")),
            .. shape.Outs.Select(o => Block.Item("  ", $"{Name(shape, o.Attacker)} {(o.RunsOff ? "runs off" : "is out")} at move {Words.Number(o.Move)}, count {Count(o.Time)}, {Words.Number(shape.PercentAt(o.Time))} % of the fight, by a move of weight {Words.Number(o.Weight)}.")),
            Block.Gap,
            Block.Heading("Figures, and what would lift them"),
            .. figures.GroupBy(f => f.Rule).SelectMany(g => g.SelectMany(Of).Prepend(Block.Item("  ", g.Key))),
            Block.Gap,
            Block.Heading("Measures"),
            .. ShapeFacts.Of(shape).Select(f => Block.Row((f.Name, 16), (f.Text, Page.Width - 20))),
            Block.Gap,
            Block.Heading("Wear of each performer"),
            Block.Columns(("who", 16), ("moves", 5), ("attacks", 7), ("blows", 5), ("to head", 7), ("falls", 5), ("effort", 7), ("way", 7)),
            .. shape.Wears.Select(w => Block.Row((Name(shape, w.Performer), 16), (Words.Number(w.Moves), 5), (w.Performer < 0 ? "-" : Words.Number(w.Attacks), 7), (Words.Number(w.Blows), 5), (w.Performer < 0 ? "-" : Words.Number(w.HeadBlows), 7), (Words.Number(w.Falls), 5), (Seconds(shape, w.Effort), 7), (w.Performer < 0 ? "-" : Metres(w.Way), 7))),
        ];
    }

    private static string Sum(FightShape shape, IReadOnlyList<Figure> figures) =>
        $"{Words.Many(shape.Steps.Count, "move")} against {Words.Many(shape.Scene.Cast, "attacker")}, {new HalfCounts(shape.End).InWords}, {Words.Number(decimal.Round(shape.Seconds, 1))} s: " +
        $"{Words.Number(figures.Count(f => f.IsMet == true))} of {Words.Many(figures.Count(f => f.IsMet is not null), "figure")} within their bands.{(StyleWords.Of(shape.Scene) is { } style ? $" Asked for: {style}." : string.Empty)}";

    private static IEnumerable<Block> Of(Figure figure)
    {
        var mark = figure.IsMet switch
        {
            true => "[x]",
            false => "[ ]",
            null => " - ",
        };
        return [Block.Row((mark, 3), (figure.Name, 38), (FigureWords.Value(figure), 17), (FigureWords.Band(figure), 11)), Block.Item("         ", figure.Lift)];
    }

    private static string Top(FightShape shape, int stretch)
    {
        var at = Math.Min(shape.End, (stretch + 1) * Intensity.Stretch) - 1;
        var span = shape.OnTop.FirstOrDefault(s => s.From <= at && s.To > at);
        return span.Who switch
        {
            Upper.Hero => Name(shape, -1),
            Upper.Attackers => "the attackers",
            _ => "even",
        };
    }

    private static string Name(FightShape shape, int performer) => Page.Clean(performer < 0 ? shape.Scene.Brief.Hero.Name : shape.Scene.Brief.Attackers[performer].Name);

    private static string Count(int moment) => new HalfCounts(moment).ToCountText();

    private static string Seconds(FightShape shape, int halfCounts) => Words.Number(decimal.Round(shape.Scene.Pulse.Slowest.SecondsIn(new HalfCounts(halfCounts)), 1)) + " s";

    private static string Metres(int centimetres) => Words.Number(decimal.Round(centimetres / 100m, 1)) + " m";
}
