using System.Globalization;
using Generator.Domain;
using Generator.Domain.Sketches;
using Generator.Library.Reading;
using Generator.Library.Words;

namespace Generator.Library.Files.Notes;

/// <summary>
/// Reads notes as a coordinator writes them: one line, one or more moves; left of <c>&gt;</c> what the attacker does, right of it what the hero does,
/// separated by commas. Lines about a performer say who they are and where they stand. Every word that means nothing is told at once, with line and column.
/// </summary>
public static class NotesReader
{
    /// <summary>The sketch with what was understood of it, or everything that is wrong with it.</summary>
    /// <param name="file">The notes.</param>
    /// <param name="book">The library.</param>
    /// <param name="brief">Given beside; null takes the attackers from the notes and the rest by default.</param>
    public static Read<ReadSketch> Parse(SourceFile file, Book book, Brief? brief = null)
    {
        var problems = new ProblemList();
        if (OtherForm(file.Text) is { } fault)
        {
            problems.Add(new Problem(file.Name, 0, string.Empty, string.Empty, fault.Message, fault.Maybe));
            return new Read<ReadSketch>(null, problems);
        }

        var lines = NotesLine.All(file.Text, book.Props);
        var cast = new NotesCast(lines, brief, book.Props, book.Things, Refuse);
        var reader = new MoveNotes(new MeaningFinder(book), cast, Refuse);
        var moves = cast.Lines.Where(l => l.Kind is NotesLineKind.Moves or NotesLineKind.Gap or NotesLineKind.Beat).SelectMany(reader.Read).ToList();
        var said = moves.Count(m => !m.IsGap);
        if (said == 0 && problems.IsEmpty)
        {
            Refuse(0, new NotesFault(0, "The notes hold no move.", "Maybe write one such as: Bruno: wide swing > low parry, elbow to the face"));
        }
        else if (!Measures.Moves.Allows(said) && said > 0)
        {
            Refuse(0, new NotesFault(0, $"The notes hold {said.ToString(CultureInfo.InvariantCulture)} moves, which is not {Measures.Moves.Range}.", "Maybe cut them into several fights."));
        }

        return new Read<ReadSketch>(problems.IsEmpty ? new ReadSketch(cast.Sketch(moves), [.. cast.Understood.Concat(reader.Understood).OrderBy(u => u.Line)]) : null, problems);

        void Refuse(int line, NotesFault fault) => problems.Add(new Problem(
            file.Name, line, fault.Column > 0 ? "column " + fault.Column.ToString(CultureInfo.InvariantCulture) : string.Empty, string.Empty, fault.Message, fault.Maybe));
    }

    /// <summary>Something else under the name of notes.</summary>
    private static NotesFault? OtherForm(string text)
    {
        var first = text.TrimStart('\uFEFF', ' ', '\t', '\r', '\n').Split('\n')[0].ToLowerInvariant();
        return first is ['{' or '[', ..] ? new NotesFault(0, "The file holds JSON, not notes.", "Maybe give it a name that ends in .json.")
            : first.Split(',').Count(c => RoutineRow.Fields.Contains(c.Trim(), StringComparer.Ordinal)) >= 2 ? new NotesFault(0, "The file holds a table, not notes.", "Maybe give it a name that ends in .csv.")
            : null;
    }

    /// <summary>Notes rather than a routine: by the end of the name, or because the text begins neither as JSON nor as CSV.</summary>
    public static bool IsNotes(SourceFile file) => file.Name.EndsWith(".notes.txt", StringComparison.OrdinalIgnoreCase)
        || (!file.Name.EndsWith(".csv", StringComparison.OrdinalIgnoreCase) && !file.Name.EndsWith(".json", StringComparison.OrdinalIgnoreCase) && NotesLine.LooksLikeNotes(file.Text));
}
