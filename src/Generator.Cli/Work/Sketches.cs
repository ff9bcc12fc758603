using System.Globalization;
using Generator.Cli.Changes;
using Generator.Domain;
using Generator.Library;
using Generator.Library.Files.Notes;
using Generator.Rules;
using Generator.Rules.Replaying;
using Generator.Solver.Completing;

namespace Generator.Cli.Work;

/// <summary>Fills sketches for every command that takes one.</summary>
internal static class Sketches
{
    /// <summary>The best filling that was found, with the writer's notes and the stances in it; null when there is none.</summary>
    /// <param name="read">The sketch.</param>
    /// <param name="book">The library.</param>
    /// <param name="desk">Is told how long it takes at most; may stop it.</param>
    /// <param name="options">Seed and time; what is usual for null.</param>
    /// <param name="tell">Whether every better filling is told; it is kept in any case.</param>
    /// <exception cref="RefusedException">No filling can be.</exception>
    public static Completed? Fill(ReadSketch read, Book book, Desk desk, CompleteOptions? options = null, bool tell = false)
    {
        Allies.Refuse(null, read.Sketch.Brief, "fills in nothing that is open");
        options ??= new CompleteOptions { Time = desk.Patience ?? new CompleteOptions().Time };
        if (Complete.Clash(read.Sketch, book) is { Count: > 0 } clash)
        {
            throw new RefusedException($"No routine can be made of these notes. {string.Join(' ', clash)}", "Maybe another place, fewer people or a larger floor; a brief (--brief) says how large it is.") { Code = ExitCode.Impossible };
        }

        desk.Limit(options.Time);
        var progress = Progress.At(desk);
        var keep = desk.Keeper(book);
        return progress.Run("Completing", () => Complete.Of(read.Sketch, book, options, tell ? new CompleteProgress(progress, keep).Report : better => keep(better.Routine, better.Verdict.Points), desk.Stop)) is { } completed ? WithNotes(completed, book) : null;
    }

    /// <summary>The routine that a sketch becomes; what was understood and what gave is told.</summary>
    /// <exception cref="RefusedException">There was none in time.</exception>
    public static Routine Filled(ReadSketch read, string name, Book book, Desk desk)
    {
        if (Fill(read, book, desk) is not { } completed)
        {
            throw new RefusedException($"{name}: time ran out before these notes were filled in. Whether they can be is not known.", $"Maybe fill them in first, with more time: generator complete {name} --time 60 --out fight.routine.json")
            {
                Code = ExitCode.OutOfTime,
            };
        }

        var scene = new Scene(completed.Routine.Brief, book);
        var lines = UnderstoodText.Of(read, book).Concat(GaveText.All(completed, scene).SelectMany(CompleteText.Gave));
        foreach (var line in (IEnumerable<string>)[string.Create(CultureInfo.InvariantCulture, $"{name} is filled in first: {completed.Stands} of {completed.Said} moves stand as written."), .. lines])
        {
            desk.Err.WriteLine(line);
        }

        return completed.Routine;
    }

    private static Completed WithNotes(Completed completed, Book book)
    {
        var moves = completed.Routine.Moves.ToArray();
        foreach (var (said, row) in completed.Sketch.Moves.Zip(completed.Rows).Where(m => m.Second >= 0 && m.First.Note.Length > 0))
        {
            moves[row] = moves[row] with { Note = said.Note };
        }

        return completed with { Routine = StanceNotes.Written(new Scene(completed.Routine.Brief, book), completed.Routine with { Moves = moves }) };
    }
}
