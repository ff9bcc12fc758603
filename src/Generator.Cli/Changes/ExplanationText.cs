using System.Globalization;
using Generator.Domain;
using Generator.Paperwork.Text;
using Generator.Rules.Judging;
using Generator.Solver.Explaining;

namespace Generator.Cli.Changes;

/// <summary>Explanations as plain text of fixed width.</summary>
internal static class ExplanationText
{
    /// <summary>Examples shown of what one rule excludes.</summary>
    private const int Examples = 3;

    private const int MostFitting = 12;

    private const int MostNamed = 8;

    public static string Of(Brief brief, BriefExplanation explanation) => Text(
    [
        .. Page.Wrap("Explanation: " + brief.Title, Page.Width),
        .. Page.Wrap(Verdict(explanation), Page.Width),
        Page.Line('='),
        .. explanation.Reasons.SelectMany(r => Page.Hang("  ", r)),
        .. explanation.Clashes.SelectMany((c, i) => Set(i > 0 ? "ALSO THESE" : c.Count == 1 ? "THIS CANNOT BE" : "THESE CLASH", c, "  - ")),
        .. explanation.GiveUps.Count > 0 ? [string.Empty, "A WAY OUT IS ANY ONE OF THESE"] : Array.Empty<string>(),
        .. explanation.GiveUps.SelectMany(g => Page.Hang("  - ", string.Join("; and ", g.Words))),
        Page.Line('-'),
        .. Page.Wrap(Standing(explanation), Page.Width),
    ]);

    public static string Of(Routine routine, MoveExplanation explanation)
    {
        var tried = explanation.Fitting.Count + explanation.Excluded.Sum(e => e.Candidates.Count);
        return Text(
        [
            .. Page.Wrap($"Explanation of move {Number(explanation.Move + 1)}: {routine.Brief.Title}", Page.Width),
            .. Page.Wrap(MoveText.WithCount(explanation.Scene, routine.Moves[explanation.Move]), Page.Width),
            .. Page.Wrap($"{Number(tried)} other techniques were put in its place, each with the reaction that suits best, and the routine was audited each time.", Page.Width),
            Page.Line('='),
            $"WOULD DO AS WELL  {Number(explanation.Fitting.Count)}",
            .. explanation.Fitting.Take(MostFitting).SelectMany(f => Page.Hang("  ", Fitting(explanation, f))),
            .. explanation.Fitting.Count > MostFitting ? [$"  and {Number(explanation.Fitting.Count - MostFitting)} more"] : Array.Empty<string>(),
            .. explanation.Excluded.SelectMany(e => Excluded(e.Rule, e.Candidates)),
        ]);
    }

    private static IEnumerable<string> Excluded(string rule, IReadOnlyList<MoveCandidate> candidates)
    {
        yield return string.Empty;
        foreach (var line in Page.Wrap($"EXCLUDED BY {rule} ({Number(candidates.Count)}): {RuleBook.All[RuleBook.IndexOf(rule)].Title}", Page.Width))
        {
            yield return line;
        }

        foreach (var line in candidates.Take(Examples).SelectMany(c => Page.Hang("  ", $"{c.Technique.Name}: {c.Against!.Message}{Figures(c.Against)}")))
        {
            yield return line;
        }

        if (candidates.Count > Examples)
        {
            var named = candidates.Skip(Examples).Take(MostNamed).Select(c => c.Technique.Name).ToList();
            var rest = candidates.Count - Examples - named.Count;
            foreach (var line in Page.Hang("  ", $"and {string.Join(", ", named)}{(rest > 0 ? $" and {Number(rest)} more" : string.Empty)}"))
            {
                yield return line;
            }
        }
    }

    private static string Figures(Finding finding)
    {
        if (finding is { Measured: { } seen, Allowed: { } bound } && Says(finding.Message, seen) && Says(finding.Message, bound))
        {
            return string.Empty;
        }

        return finding is { Measured: { } measured, Allowed: { } allowed } ? $" (measured {Figure(measured, finding.Unit)}, allowed {Figure(allowed, finding.Unit)})" : string.Empty;
    }

    /// <summary>"half a count", "1 count", "1.2 m", "3".</summary>
    private static string Figure(decimal figure, string unit) => (figure, unit) switch
    {
        (0.5m, "counts") => "half a count",
        (1, "counts") => "1 count",
        (_, "") => figure.ToString("0.##", CultureInfo.InvariantCulture),
        _ => string.Create(CultureInfo.InvariantCulture, $"{figure:0.##} {unit}"),
    };

    /// <summary>The sentence names the figure already.</summary>
    private static bool Says(string message, decimal figure) => message.Contains(figure.ToString("0.##", CultureInfo.InvariantCulture), StringComparison.Ordinal);

    private static string Fitting(MoveExplanation explanation, MoveCandidate candidate)
    {
        var reaction = candidate.Reaction is { } id ? $", {explanation.Scene.Book.Reaction(id).Name}" : string.Empty;
        var points = candidate.Points switch
        {
            0 => "costs nothing",
            > 0 => "costs " + Amounts.Many(candidate.Points, "point"),
            _ => "saves " + Amounts.Many(-candidate.Points, "point"),
        };
        return $"{candidate.Technique.Name}{reaction}: {points}";
    }

    private static IEnumerable<string> Set(string title, IReadOnlyList<string> statements, string mark) =>
        [string.Empty, title, .. statements.SelectMany(s => Page.Hang(mark, s))];

    private static string Verdict(BriefExplanation explanation) => explanation.Brief switch
    {
        Answer.Solvable => "There is a routine for this brief; nothing has to be given up.",
        Answer.Impossible => "No routine can satisfy this brief.",
        _ => string.Create(CultureInfo.InvariantCulture, $"Not proven: no routine was found in {explanation.Elapsed.TotalSeconds:0.0} s."),
    };

    private static string Standing(BriefExplanation explanation) => explanation switch
    {
        { Brief: Answer.Solvable } => "A draft was made and passed the audit.",
        { Proven: true, Minimal: true } => "Proven: each clash cannot hold together, there is a routine without any one of its statements, and every way out was shown by a draft that passed the audit.",
        { Proven: true } => "Proven: each clash cannot hold together, and every way out was shown by a draft that passed the audit. Not shown: that a clash needs all of its statements.",
        { Brief: Answer.Unknown, GiveUps.Count: 0 } => "Nothing was proven against the brief, and nothing was found that helps.",
        { Brief: Answer.Unknown } => "Nothing was proven against the brief. Every way out was shown by a draft that passed the audit.",
        _ => "Proven is that no routine can satisfy the brief, not that each of these clashes alone forbids one. Every way out was shown by a draft that passed the audit.",
    };

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);

    private static string Text(IEnumerable<string> lines) => string.Concat(lines.Select(l => l + "\n"));
}
