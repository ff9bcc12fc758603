using System.Text;
using Generator.Paperwork.Floor;
using Generator.Rules.Shapes;

namespace Generator.Paperwork.Shaping;

/// <summary>The lane of one performer in the picture of a shape.</summary>
internal static class ShapeLanes
{
    private const double Names = 132;

    /// <param name="svg">Drawn into.</param>
    /// <param name="shape">The fight.</param>
    /// <param name="wear">Whose lane.</param>
    /// <param name="top">Its upper edge.</param>
    /// <param name="tall">Its height.</param>
    /// <param name="x">Where a moment is.</param>
    public static void Draw(StringBuilder svg, FightShape shape, Wear wear, double top, double tall, Func<double, double> x)
    {
        var (who, brief) = (wear.Performer, shape.Scene.Brief);
        var name = who < 0 ? brief.Hero.Name : brief.Attackers[who].Name;
        var middle = top + (tall / 2);
        ShapePicture.Text(svg, 14, middle + 5, TextSize.Name(Text.Page.Clean(name), 14, Names), 14, "#14161b", who < 0);
        var end = shape.Outs.Where(o => o.Attacker == who).Select(o => o.Time).FirstOrDefault(shape.End);
        svg.Append($"<path d=\"M{N(x(0))},{N(middle)}L{N(x(end))},{N(middle)}\" stroke=\"#6d7482\" fill=\"none\"/>\n");
        foreach (var step in shape.Steps.Where(s => who < 0 || s.Concerns(who) || s.Row.Attacker == who))
        {
            if (who >= 0 && step.Attack is { } attack)
            {
                Box(svg, x(step.Contact - attack.Length.Value), x(step.Contact), middle, 18, "#a63a00");
            }

            Box(svg, x(step.Start), x(step.End), middle, who < 0 ? 18 : 10, who < 0 ? "#1c5aa6" : "#c9cdd5");
            if (step.Falls.Any(f => f.Who == who))
            {
                ShapePicture.Text(svg, x(step.End) - 6, middle + 16, "▼", 13, "#14161b", false);
            }
        }

        foreach (var contact in shape.Contacts.Where(c => c.Lands && (who < 0 ? !c.ByHero : c.ByHero && c.Attacker == who)))
        {
            svg.Append($"<circle cx=\"{N(x(contact.Time))}\" cy=\"{N(middle)}\" r=\"4\" fill=\"#8c1420\" stroke=\"#fff\" stroke-width=\"1\"/>\n");
        }

        foreach (var gone in shape.Outs.Where(o => o.Attacker == who))
        {
            ShapePicture.Text(svg, x(gone.Time) + 3, middle + 6, gone.RunsOff ? "→" : "✕", 17, "#14161b", true);
        }
    }

    private static void Box(StringBuilder svg, double from, double to, double middle, double tall, string fill) =>
        svg.Append($"<rect x=\"{N(from)}\" y=\"{N(middle - (tall / 2))}\" width=\"{N(Math.Max(1, to - from - 0.6))}\" height=\"{N(tall)}\" fill=\"{fill}\"/>\n");

    private static string N(double value) => ShapePicture.N(value);
}
