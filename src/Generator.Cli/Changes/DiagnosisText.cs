using System.Globalization;
using Generator.Domain;
using Generator.Library.Files.Notes;
using Generator.Paperwork.Text;
using Generator.Rules;
using Generator.Solver.Completing;

namespace Generator.Cli.Changes;

/// <summary>
/// The audit of a sketch: the fewest things of all that is said that have to give, in the writer's own words and lines, each with the rule that speaks against
/// it, its figures, and what it could become. Nothing is judged against what nobody wrote.
/// </summary>
internal static class DiagnosisText
{
    private const string Under = "           ";

    public static string Of(ReadSketch read, Completed completed, Scene scene)
    {
        var gave = GaveText.All(completed, scene);
        IEnumerable<string> lines =
        [
            .. Page.Wrap("Audit of a sketch: " + completed.Routine.Brief.Title, Page.Width),
            .. Page.Wrap(Sum(completed, gave.Count), Page.Width),
            Page.Line('='),
            .. UnderstoodText.Of(read, scene.Book),
            .. gave.Count == 0 ? [] : new[] { string.Empty, "MUST GIVE" },
            .. gave.SelectMany(One),
            Page.Line('-'),
            .. Page.Wrap("What nobody wrote is open and judged by nothing; generator complete fills it in and prints the routine.", Page.Width),
            .. Page.Wrap(Cautions.Audit, Page.Width),
        ];
        return string.Concat(lines.Select(l => l + "\n"));
    }

    private static string Sum(Completed completed, int gave) => gave switch
    {
        0 when completed.Said == 1 => "The one move can stand as written.",
        0 => string.Create(CultureInfo.InvariantCulture, $"All {completed.Said} moves can stand as written."),
        1 => string.Create(CultureInfo.InvariantCulture, $"1 thing must give, {completed.Stands} of {completed.Said} moves stand ({Known(completed)})."),
        _ => string.Create(CultureInfo.InvariantCulture, $"{gave} things must give, {completed.Stands} of {completed.Said} moves stand ({Known(completed)})."),
    };

    private static string Known(Completed completed) => completed.IsLeast ? "proven fewest" : "fewest found";

    private static IEnumerable<string> One(GaveText gave)
    {
        var (head, instead) = gave switch
        {
            { Cell: "put in" } => ("something is missing before this move", $"could be put in: {gave.Is}"),
            { Is: "" } => ($"\"{Page.Clean(gave.Was)}\"", "could be left out"),
            _ => ($"{gave.Cell} \"{Page.Clean(gave.Was)}\"", $"could become: {gave.Is}"),
        };
        return Page.Hang(UnderstoodText.Line(gave.Line), head)
            .Concat(gave.Why is { } why ? Page.Hang(Under, $"{why.Rule}: {why.Message}").Concat(Page.Hang(Under, FindingLines.Figures(why))) : Page.Hang(Under, "no rule speaks against it alone; it gives for what stands round it"))
            .Concat(Page.Hang(Under, instead));
    }
}
