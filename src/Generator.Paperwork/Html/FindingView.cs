using Generator.Domain;
using Generator.Paperwork.Text;

namespace Generator.Paperwork.Html;

/// <summary>A finding of the audit as the pages show it.</summary>
/// <param name="Severity">unsafe, broken, rough or note.</param>
/// <param name="Rule">Id of the rule.</param>
/// <param name="When">"move 3, count 4&amp;".</param>
/// <param name="Message">What it says.</param>
/// <param name="Advice">What to do; may be empty.</param>
public sealed record FindingView(string Severity, string Rule, string When, string Message, string Advice)
{
    /// <summary>A sign beside the colour: the gravest has the sharpest.</summary>
    public string Sign => Severity switch
    {
        "unsafe" => "▲!",
        "broken" => "■×",
        "rough" => "◆~",
        _ => "●i",
    };

    public static FindingView Of(Finding finding) =>
        new(Words.Of(finding.Severity), finding.Rule, (finding.Move > 0 ? $"move {Words.Number(finding.Move)}, " : string.Empty) + "count " + finding.Count.ToCountText(), Page.Clean(finding.Message), Page.Clean(finding.Advice));
}
