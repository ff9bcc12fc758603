using Generator.Domain;
using Generator.Domain.Sketches;
using Generator.Library;
using Generator.Library.Files;
using Generator.Library.Files.Notes;
using Generator.Library.Reading;

namespace Generator.Rehearsal.Documents;

/// <summary>Opens what somebody names: a routine, a sketch, notes or a brief.</summary>
public static class Opening
{
    /// <summary>The document, and a remark on a working copy of an earlier run; null for none.</summary>
    /// <exception cref="RefusedEditException">It cannot be read, or is open elsewhere.</exception>
    public static (Document Document, string? Remark) Of(string path, Book book)
    {
        var problems = new ProblemList();
        var file = SourceFile.Load(path, problems) ?? throw Refused(problems.InOrder);
        var sketch = Sketch(file, book);
        var store = Store.Open(path);
        if (store.Left() is not { } left)
        {
            return (new Document(sketch, book, store, isSaved: string.Equals(store.Path, store.Target, StringComparison.Ordinal)), null);
        }

        var working = Read(left, book);
        if (working is null || File.GetLastWriteTimeUtc(store.Path) > File.GetLastWriteTimeUtc(store.Working))
        {
            var aside = Path.GetFileName(store.PutAside());
            return (new Document(sketch, book, store), $"The file is newer than the working copy beside it, which is kept as {aside}.");
        }

        return (new Document(working, book, store, isSaved: false), "This goes on with the working copy, which holds what was not saved the last time.");
    }

    /// <summary>A fight of which nothing is there but somebody to fight; its file, in a folder, is written when it is saved.</summary>
    /// <exception cref="RefusedEditException">Nothing can be written there.</exception>
    public static (Document Document, string? Remark) New(string folder, Book book)
    {
        var store = Store.New(folder);
        if (store.Left() is { } left && Read(left, book) is { } working)
        {
            return (new Document(working, book, store, isSaved: false), "This goes on with the working copy of a new fight, which was not saved the last time.");
        }

        var brief = new Brief { Title = "New fight", Attackers = [new AttackerPart { Name = "Ash" }, new AttackerPart { Name = "Birch" }] };
        return (new Document(new Sketch { Brief = brief, Placements = [null, null], Moves = [] }, book, store, isSaved: false), null);
    }

    internal static Sketch Sketch(SourceFile file, Book book)
    {
        if (NotesReader.IsNotes(file))
        {
            var notes = NotesReader.Parse(file, book);
            return notes.Value?.Sketch ?? throw Refused(notes.Problems);
        }

        if (Read(file, book) is { } sketch)
        {
            return sketch;
        }

        var brief = BriefReader.Parse(file, book, lengthRequired: false);
        if (brief.IsGood)
        {
            return new Sketch { Brief = brief.Value, Placements = [.. brief.Value.Attackers.Select(a => a.Bearing is { } b ? new Placement(b, a.Distance ?? RoutineReader.DefaultDistance, a.Entrance ?? HalfCounts.Zero) : null)], Moves = [] };
        }

        var isBrief = file.Name.EndsWith(".brief.json", StringComparison.OrdinalIgnoreCase);
        throw Refused(isBrief ? brief.Problems : SketchReader.Parse(file, book).Problems);
    }

    /// <summary>Rows, whole or with open cells; null where the file holds something else.</summary>
    private static Sketch? Read(SourceFile file, Book book)
    {
        var routine = RoutineReader.Parse(file, book);
        return routine.IsGood ? Whole(routine.Value) : SketchReader.Parse(file, book).Value?.Sketch;
    }

    /// <summary>A routine in which everything is said, what only a routine says included.</summary>
    internal static Sketch Whole(Routine routine)
    {
        var sketch = Domain.Sketches.Sketch.Of(routine);
        return sketch with
        {
            Moves = [.. sketch.Moves.Zip(routine.Moves, (m, r) => m with { IsSuffered = r.Technique is null, Note = r.Note, Cue = r.Cue, Linger = r.Linger, Stance = r.Stance })],
        };
    }

    private static RefusedEditException Refused(IReadOnlyList<Problem> problems) =>
        new(string.Join('\n', problems.Select(p => p.ToText()).Take(20)), "Maybe mend the file first; generator guide routine says what it may hold.");
}
