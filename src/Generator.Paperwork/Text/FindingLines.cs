using Generator.Domain;

namespace Generator.Paperwork.Text;

/// <summary>One finding after another, in the order of the counts.</summary>
public static class FindingLines
{
    private const string Under = "         ";

    /// <summary>All of them, each under its count, rule and move.</summary>
    public static IEnumerable<string> Of(IReadOnlyList<Finding> findings) => findings.OrderBy(f => f.Count).ThenBy(f => f.Move).SelectMany(One);

    private static IEnumerable<string> One(Finding finding)
    {
        var move = finding.Move > 0 ? "move " + Words.Number(finding.Move) : "the whole";
        foreach (var line in Page.Row(2, (move, 9), ("count " + finding.Count.ToCountText(), 10), (finding.Rule, 15), (Words.Of(finding.Severity), 6), (finding.Who, 28)))
        {
            yield return line;
        }

        foreach (var line in Page.Hang(Under, finding.Message).Concat(Page.Hang(Under, Figures(finding))).Concat(Page.Hang(Under, finding.Advice)))
        {
            yield return line;
        }
    }

    /// <summary>"measured 3, allowed 2, 1 point"; empty where nothing was measured and it costs nothing.</summary>
    public static string Figures(Finding finding)
    {
        IReadOnlyList<string?> figures =
        [
            finding.Measured is { } measured ? $"measured {Words.Number(measured)}{Unit(finding, measured)}" : null,
            finding.Allowed is { } allowed ? $"allowed {Words.Number(allowed)}{Unit(finding, allowed)}" : null,
            finding.Points > 0 ? Words.Points(finding.Points) : null,
        ];
        return string.Join(", ", figures.OfType<string>());
    }

    private static string Unit(Finding finding, decimal of) => finding.Unit.Length == 0 ? string.Empty : " " + (of == 1 && finding.Unit.Length > 1 && finding.Unit[^1] == 's' ? finding.Unit[..^1] : finding.Unit);
}
