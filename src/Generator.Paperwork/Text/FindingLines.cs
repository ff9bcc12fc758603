using Generator.Domain;
using Generator.Rules.Judging;

namespace Generator.Paperwork.Text;

/// <summary>One finding after another, in the order of the counts.</summary>
public static class FindingLines
{
    private const string Under = "         ";

    /// <summary>All of them, each under its count, rule and move.</summary>
    public static IEnumerable<string> Of(IReadOnlyList<Finding> findings) => findings.OrderBy(f => f.Count).ThenBy(f => f.Move).SelectMany(One);

    /// <summary>All of them as they come, under each in one or two lines those that vanish with it.</summary>
    public static IEnumerable<string> Of(IReadOnlyList<Fold> folds) => folds.SelectMany(f => One(f.Finding).Concat(Folded(f)));

    private static IEnumerable<string> Folded(Fold fold) =>
    [
        .. fold.Mend.Length == 0 ? [] : Page.Hang(Under, "Mended with " + fold.Mend + "."),
        .. fold.Folded.Count == 0 ? [] : Page.Hang(Under, $"With it {(fold.Folded.Count == 1 ? "goes" : "go")} {string.Join("; ", fold.Folded.GroupBy(f => f.Rule).Select(g => Named(g.Key, [.. g])))}."),
    ];

    /// <summary>"blind-side at moves 11, 16"; a finding of the whole routine by its rule alone.</summary>
    private static string Named(string rule, IReadOnlyList<Finding> findings)
    {
        int[] moves = [.. findings.Select(f => f.Move).Where(m => m > 0).Distinct()];
        return moves.Length == 0 ? rule : $"{rule} at {(moves.Length == 1 ? "move" : "moves")} {string.Join(", ", moves.Select(Words.Number))}";
    }

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
            finding.Measured is { } measured ? $"measured {Amount(finding, measured)}" : null,
            finding.Allowed is { } allowed ? $"allowed {Amount(finding, allowed)}" : null,
            finding.Points > 0 ? Words.Points(finding.Points) : null,
        ];
        return string.Join(", ", figures.OfType<string>());
    }

    private static string Amount(Finding finding, decimal of) => (of, finding.Unit) is (0.5m, "counts") ? "half a count" : Words.Number(of) + Unit(finding, of);

    private static string Unit(Finding finding, decimal of) => finding.Unit.Length == 0 ? string.Empty : " " + (of == 1 ? Amounts.One(finding.Unit) : finding.Unit);
}
