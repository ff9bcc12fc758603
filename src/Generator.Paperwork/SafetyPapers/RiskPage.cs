using System.Globalization;
using System.Text.Encodings.Web;
using System.Text.Unicode;
using Generator.Paperwork.Text;

namespace Generator.Paperwork.SafetyPapers;

/// <summary>The risk assessment as one HTML page that prints on A4: a table of hazards, the worst first, with the level in words as well as in colour.</summary>
public static class RiskPage
{
    private const string Style =
        "body{font:14px/1.45 system-ui,sans-serif;max-width:70rem;margin:2rem auto;padding:0 1rem;color:#1a1a1a;background:#fff}h1{font-size:1.5rem}h2{font-size:1.15rem;margin-top:2rem}" +
        ".caution{border:2px solid #1a1a1a;padding:.6rem .8rem}table{border-collapse:collapse;width:100%}th,td{border:1px solid #767676;padding:.35rem .5rem;text-align:left;vertical-align:top}" +
        "thead th{background:#ececec}.Green{background:#d9efdc}.Yellow{background:#fff2c2}.Red{background:#f8cfcb;font-weight:700}ol,ul{margin:0;padding-left:1.2rem}.line{border-bottom:1px solid #1a1a1a;display:inline-block;min-width:16rem}" +
        "dt{font-weight:600;margin-top:.4rem}dd{margin:0}@page{size:A4 landscape;margin:12mm}@media print{body{margin:0;max-width:none;font-size:11px}thead{display:table-header-group}tr{break-inside:avoid}}";

    private static readonly HtmlEncoder Encoder = HtmlEncoder.Create(UnicodeRanges.All);

    private static readonly string[] Fields = ["Fight coordinator", "Why competent", "Fight captain", "Who may stop it", "Rehearsal hours agreed", "How all are told", "First aider, kit at", "Hospital, way there", "Controls in place by", "Review on, by"];

    public static string Of(PaperSource source, IReadOnlyList<Hazard> hazards)
    {
        var title = Text("Risk assessment: " + Page.Clean(source.Brief.Title));
        var grave = source.Verdict.Findings.Where(f => f.Severity >= Domain.Severity.Broken).ToList();
        IEnumerable<string> lines =
        [
            "<!doctype html>", "<html lang=\"en\">", "<head>", "<meta charset=\"utf-8\">", "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">",
            $"<title>{title}</title>", $"<style>{Style}</style>", "</head>", "<body>", "<main>", $"<h1>{title}</h1>",
            $"<p class=\"caution\">{Text(SafetyCautions.NoClearance)}</p>",
            $"<p>Guidance: {Text(source.Options.Guidance.Country)}. {Text(string.Join(' ', source.Options.Guidance.Sources))}</p>",
            $"<p>Routine {RoutineHash.Of(source.Routine)[..16]}; any change of it clears the sign-offs.</p>",
            .. grave.Count == 0 ? [] : grave.Select(f => $"<li>{Text(f.Message)}</li>")
                .Prepend("<ul>").Prepend("<p class=\"caution Red\">Not to be performed like this: the audit found something unsafe or broken.</p>").Append("</ul>"),
            "<h2>Steps 1 to 3: hazards, who might be harmed and how, precautions</h2>",
            "<table>", "<thead><tr><th>Hazard</th><th>When</th><th>Who, and how</th><th>Before controls</th><th>Why not avoided?</th><th>Controls in their order</th><th>After 2 and 3, seen by</th></tr></thead>", "<tbody>",
            .. hazards.Select((h, i) => Row(h, i + 1)),
            "</tbody>", "</table>",
            "<p>Likelihood is counted from how often it is done in a day of runs: a proposal, no source. The matrix (Cox 2008) orders what to look at first and measures nothing.</p>",
            "<table>", "<caption>How ratings are read</caption>", $"<thead><tr><th>Harm</th>{string.Concat(Enum.GetValues<Likelihood>().Select(l => $"<th>{Words.Of(l)}</th>"))}</tr></thead>", "<tbody>",
            .. Enum.GetValues<Harm>().Reverse().Select(h => $"<tr><th>{Words.Of(h)}</th>{string.Concat(Enum.GetValues<Likelihood>().Select(l => Cell(RiskMatrix.Of(h, l), Words.Of(RiskMatrix.Of(h, l)))))}</tr>"),
            "</tbody>", "</table>",
            "<h2>Step 4: record and implement. Step 5: review</h2>", "<dl>",
            .. Fields.Select(f => $"<dt>{Text(f)}</dt><dd><span class=\"line\">&nbsp;</span></dd>"),
            "</dl>",
            "<p>Review whenever the routine, the cast, the place, the floor or the clothes change, after any injury or near miss, and when anybody asks.</p>",
            "</main>", "</body>", "</html>",
        ];
        return string.Concat(lines.Select(l => l + "\n"));
    }

    private static string Row(Hazard hazard, int number)
    {
        var controls = string.Concat(hazard.Controls.Select(c => string.Create(CultureInfo.InvariantCulture, $"<li value=\"{(int)c.Order + 1}\">{Text(c.Text)}</li>")));
        return $"<tr><th>H{Words.Number(number)} {Text(hazard.Title)}</th><td>{Text(RiskSheet.When(hazard))}</td><td><strong>{Text(string.Join(", ", hazard.Who))}</strong>: {Text(hazard.How)}</td>"
            + Cell(hazard.Level, $"{Words.Of(hazard.Harm)} × {Words.Of(hazard.Likelihood)}: {RiskSheet.Word(hazard.Level)}") + "<td></td>"
            + $"<td><ol>{controls}</ol></td>" + Cell(hazard.LevelAfter, $"{Words.Of(hazard.Harm)} × {Words.Of(hazard.LikelihoodAfter)}: {RiskSheet.Word(hazard.LevelAfter)}") + "</tr>";
    }

    private static string Cell(RiskLevel level, string text) => $"<td class=\"{level}\">{Text(text)}</td>";

    private static string Text(string text) => Encoder.Encode(text);
}
