using System.Globalization;
using Generator.Paperwork.Text;
using Generator.Rules.Replaying;

namespace Generator.Paperwork.Html;

/// <summary>The figures of one move by themselves: the contact and, where that shows more, how it is sold.</summary>
public static class FigurePlate
{
    /// <summary>Markup; empty where no pose is known.</summary>
    /// <param name="source">The routine, with what draws its figures.</param>
    /// <param name="step">One of its moves.</param>
    public static string Of(PaperSource source, Step step)
    {
        var figures = new FigureSet(source);
        FigureView?[] views = [figures.Contact(step), figures.End(step)];
        var bodies = figures.Drawn.ToDictionary(d => d.Id, d => d.Body, StringComparer.Ordinal);
        return string.Concat(views.OfType<FigureView>().Select(v => string.Create(CultureInfo.InvariantCulture, $"<svg class=\"figure\" viewBox=\"{v.Left:0.##} {v.Upper:0.##} {v.Width:0.##} {v.Height:0.##}\" preserveAspectRatio=\"xMidYMax\" aria-hidden=\"true\">{bodies[v.Id]}</svg>")));
    }

    /// <summary>"Jab left; slips right; falls short".</summary>
    public static string Told(Step step) =>
        string.Join("; ", new[] { step.Attack?.Name, step.Technique?.Name ?? Words.Unanswered, step.Reaction?.Name }.OfType<string>().Where(t => t.Length > 0).Select((t, i) => i == 0 ? t : Words.Low(t)));
}
