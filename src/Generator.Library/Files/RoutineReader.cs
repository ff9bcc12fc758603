using Generator.Domain;
using Generator.Library.Reading;

namespace Generator.Library.Files;

/// <summary>
/// Reads a routine from JSON (one that <c>draft --json</c> printed, too) or from CSV. A brief that is given replaces the one inside the
/// file; without either, the attackers are those named in the file and everything else takes its default.
/// </summary>
public static class RoutineReader
{
    /// <summary>Opening distance where nobody says one.</summary>
    public static readonly Centimetres DefaultDistance = new(300);

    /// <summary>The routine, or everything that is wrong with it. Files that end in .csv or do not begin with a brace are taken as CSV.</summary>
    public static Read<Routine> Parse(SourceFile file, Book book, Brief? brief = null)
    {
        var problems = new ProblemList();
        var routine = RowFile.Of(file, book, brief, isOpen: false, problems) is { } rows ? Routine(rows, book) : null;
        return new Read<Routine>(routine, problems);
    }

    /// <summary>The file is a table that says nothing of a brief.</summary>
    public static bool IsBare(SourceFile file) => RowFile.IsCsv(file) && !CsvRoutine.Rows(file, isOpen: true, new ProblemList()).Any(BriefColumns.IsOf);

    private static Routine Routine(RowFile file, Book book)
    {
        var reader = new RowReader(file.Brief, new Vocabulary(book));
        IReadOnlyList<Move> moves = ActorWords.InOrder([.. file.Rows.Select(reader.Read)]);
        var routine = new Routine { Brief = file.Brief, LibraryVersion = file.Version, Placements = Placing.Fill(file.Brief, file.Places, moves), Moves = moves };
        file.Finish();
        return routine;
    }
}
