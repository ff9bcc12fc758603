using Generator.Domain;
using Generator.Domain.Sketches;
using Generator.Library.Reading;
using Generator.Library.Words;

namespace Generator.Library.Files.Notes;

/// <summary>Reads a sketch from notes, or from JSON or CSV in which any cell may be empty.</summary>
public static class SketchReader
{
    /// <summary>The sketch with what was understood of it, or everything that is wrong with it.</summary>
    /// <param name="file">Notes, JSON or CSV.</param>
    /// <param name="book">The library.</param>
    /// <param name="brief">Given beside; replaces the one inside a file.</param>
    public static Read<ReadSketch> Parse(SourceFile file, Book book, Brief? brief = null)
    {
        if (NotesReader.IsNotes(file))
        {
            return NotesReader.Parse(file, book, brief);
        }

        var problems = new ProblemList();
        var sketch = RowFile.Of(file, book, brief, isOpen: true, problems) is { } rows ? Sketch(rows, book) : null;
        if (sketch is { Sketch.Moves.Count: 0 } && problems.IsEmpty)
        {
            problems.Add(new Problem(file.Name, 0, string.Empty, string.Empty, "The file holds no move.", "Maybe write a row with an attacker and a technique, or an attack."));
        }

        return new Read<ReadSketch>(sketch, problems);
    }

    private static ReadSketch Sketch(RowFile file, Book book)
    {
        var reader = new RowNotes(file.Brief, new MeaningFinder(book));
        List<SketchMove> moves = [.. file.Rows.Select(reader.Read)];
        file.Finish();
        var placements = file.Brief.Attackers.Select((a, i) => (Part: a, Place: file.Places.GetValueOrDefault(i)))
            .Select(a => (a.Place?.Bearing ?? a.Part.Bearing) is { } bearing
                ? new Placement(bearing, a.Place?.Distance ?? a.Part.Distance ?? RoutineReader.DefaultDistance, a.Place?.Entrance ?? a.Part.Entrance ?? HalfCounts.Zero) : null);
        return new ReadSketch(new Sketch { Brief = file.Brief, Placements = [.. placements], Moves = moves }, reader.Understood);
    }
}
