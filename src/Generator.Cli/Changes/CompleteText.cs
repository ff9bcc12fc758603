using System.Globalization;
using Generator.Library.Files.Notes;
using Generator.Paperwork.Text;
using Generator.Rules;
using Generator.Rules.Replaying;
using Generator.Solver.Completing;

namespace Generator.Cli.Changes;

/// <summary>A completed sketch for a person: what was understood, what gave and why, and the routine.</summary>
internal static class CompleteText
{
    public static string Of(ReadSketch read, Completed completed, Scene scene)
    {
        var gave = GaveText.All(completed, scene);
        IEnumerable<string> lines =
        [
            .. Page.Wrap("Completed: " + completed.Routine.Brief.Title, Page.Width),
            .. Page.Wrap(Sum(completed), Page.Width),
            Page.Line('='),
            .. UnderstoodText.Of(read, scene.Book, u => Chosen(u, completed)),
            .. gave.Count == 0 ? [] : new[] { "HAD TO GIVE" },
            .. gave.SelectMany(Gave),
            string.Empty,
        ];
        var wall = WallSheet.Of(scene, completed.Routine, completed.Verdict, Replay.Of(scene, completed.Routine), completed.Gave.Count == 0 ? "as written" : completed.IsLeast ? "proven best" : "best found");
        return string.Concat(lines.Select(l => l + "\n")) + wall;
    }

    private static string Sum(Completed completed)
    {
        var stands = completed.Stands == completed.Said ? completed.Said == 1 ? "The one move stands as written" : $"All {completed.Said} moves stand as written" : $"{completed.Stands} of {completed.Said} moves stand as written";
        return stands + completed.Gave.Count(g => g.Part == SketchPart.Added) switch
        {
            0 => string.Empty,
            1 => "; 1 move is put in",
            var putIn => string.Create(CultureInfo.InvariantCulture, $"; {putIn} moves are put in"),
        }
        + completed.Opened.Count switch
        {
            0 => string.Empty,
            1 => "; 1 attack and its answer, written as one, are two moves",
            var opened => string.Create(CultureInfo.InvariantCulture, $"; {opened} attacks and their answers, written as one each, are two moves each"),
        }
        + ".";
    }

    /// <summary>Of several meanings of a piece the one that the routine has; null where it has none of them.</summary>
    private static string? Chosen(Understood understood, Completed completed)
    {
        if (understood.Move < 1 || understood.Move > completed.Rows.Count || completed.Rows[understood.Move - 1] is not (>= 0 and var row))
        {
            return null;
        }

        var move = completed.Routine.Moves[row];
        var opened = completed.Opened.Any(o => o.Row == row - 1) ? completed.Routine.Moves[row - 1].Attack : null;
        return new[] { move.Technique, move.Attack ?? opened, move.Reaction }.FirstOrDefault(id => id is not null && understood.As.Contains(id, StringComparer.Ordinal));
    }

    /// <summary>One thing that gave, for the list of them.</summary>
    public static IEnumerable<string> Gave(GaveText gave)
    {
        var what = gave switch
        {
            { Cell: "put in" } => $"put in before it: {gave.Is}",
            { Was: "" } => $"{gave.Cell}: none is written; {gave.Is} comes in",
            { Is: "" } => $"\"{Page.Clean(gave.Was)}\" is left out",
            _ => $"{gave.Cell}: \"{Page.Clean(gave.Was)}\" became {gave.Is}",
        };
        var why = gave.Why is { } finding ? $". {(gave.Cell == "put in" ? "Without it" : "As written")}: {finding.Rule}, {finding.Message}" : ".";
        return Page.Hang(UnderstoodText.Line(gave.Line), what + why);
    }
}
