using Generator.Domain;
using Generator.Library;
using Generator.Library.Files;
using Generator.Library.Files.Notes;
using Generator.Library.Loading;
using Generator.Library.Reading;

namespace Generator.Cli.Work;

/// <summary>Reads what a command was given; whatever is wrong with it is refused with all its problems at once.</summary>
internal static class Inputs
{
    /// <summary>Stands for standard input.</summary>
    public const string Dash = "-";

    public const string StandardInput = "standard input";

    /// <summary>The library of the program and the user's own files.</summary>
    public static Book Book(IReadOnlyList<string>? files) => Good(files is { Count: > 0 } ? LibraryLoader.LoadBundled(files) : EarlyBook.Bundled());

    /// <summary>The text of a file, or of standard input for a dash.</summary>
    public static SourceFile Source(string path, Desk desk)
    {
        var problems = new ProblemList();
        var source = string.Equals(path, Dash, StringComparison.Ordinal) ? Piped(desk, problems) : SourceFile.Load(path, problems);
        return source ?? throw new RefusedException(string.Join('\n', problems.InOrder.Select(p => p.ToText())));
    }

    private static SourceFile? Piped(Desk desk, ProblemList problems)
    {
        try
        {
            return SourceFile.Read(StandardInput, desk.In, problems);
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            throw new RefusedException($"{StandardInput} cannot be read.\n  Maybe it is closed; name a file, or send one through a pipe.", error);
        }
    }

    public static Brief Brief(string path, Book book, Desk desk) => Brief(Source(path, desk), book, desk).Brief;

    /// <summary>The brief, and whether its marks are not its own: it says how many there are, or the way on which they lie.</summary>
    /// <param name="source">The brief.</param>
    /// <param name="book">The library.</param>
    /// <param name="desk">Where the marks are told.</param>
    /// <param name="seed">Which marks are chosen; null: as usual.</param>
    /// <param name="beside">The routine or sketch beside it, whose marks are kept where they are what the brief asks for; null for none.</param>
    /// <param name="lengthRequired">The brief must say how long the fight is.</param>
    public static (Brief Brief, bool IsChosen) Brief(SourceFile source, Book book, Desk desk, int? seed = null, Lazy<SourceFile>? beside = null, bool lengthRequired = true)
    {
        var choice = MarkChoice.Usual with { Seed = seed ?? MarkChoice.Usual.Seed };
        var read = BriefReader.Parse(source, book, lengthRequired, choice);
        if (MarkChoice.IsIn(read) && beside is not null && SketchReader.Parse(beside.Value, book).Value?.Sketch.Brief.Marks is { Count: > 0 } kept)
        {
            read = BriefReader.Parse(source, book, lengthRequired, choice with { Kept = kept });
        }

        return (Remarked(read, desk), MarkChoice.IsIn(read));
    }

    /// <summary>A brief beside a routine or a sketch, whose rows say how long it is where the brief does not.</summary>
    public static Brief BriefBeside(string path, Lazy<SourceFile> beside, Book book, Desk desk, int? seed = null) => Brief(Source(path, desk), book, desk, seed, beside, lengthRequired: false).Brief;

    /// <summary>The sketch in notes, or in rows any of whose cells may be open; a whole routine is one as well.</summary>
    public static ReadSketch Sketch(SourceFile source, Brief? brief, Book book, Desk desk) => Remarked(SketchReader.Parse(source, book, brief), desk);

    /// <summary>
    /// The routine that a file holds, or the sketch where cells of it are open; the other is null. Rows in which only words are misspelt are no sketch: they are refused.
    /// Where neither the file nor anybody else gives the brief, that is said.
    /// </summary>
    public static (Routine? Routine, ReadSketch? Sketch) RoutineOrSketch(SourceFile source, Brief? brief, Book book, Desk desk)
    {
        if (NotesReader.IsNotes(source))
        {
            var notes = Remarked(NotesReader.Parse(source, book, brief), desk);
            return notes.Sketch.Brief.Ally is null ? (null, notes) : (Allies.Whole(source.Name, notes.Sketch, book), null);
        }

        var routine = RoutineReader.Parse(source, book, brief);
        var sketch = routine.IsGood ? null : SketchReader.Parse(source, book, brief);
        var isSketch = sketch is { IsGood: true } && (sketch.Value.Sketch.Moves.Any(m => m.Count is null) || !sketch.Value.Understood.Any(u => u.IsGuess));
        if (brief is null && (routine.IsGood || isSketch) && RoutineReader.IsBare(source))
        {
            desk.Err.WriteLine($"{source.Name} holds no brief: everybody is taken as a stunt performer of middle height, tempo and floor by default, and nobody asks for acts or manners.");
            desk.Err.WriteLine("  Maybe add --brief and the name of the brief, or of a routine in JSON that holds it.");
        }

        return isSketch ? (null, Remarked(sketch!, desk)) : (Remarked(routine, desk), null);
    }

    /// <summary>The same, and says what in it was understood in one of several ways.</summary>
    public static T Remarked<T>(Read<T> read, Desk desk)
        where T : class
    {
        var good = Good(read);
        foreach (var remark in read.Remarks)
        {
            desk.Err.WriteLine(remark.ToText());
        }

        return good;
    }

    private static T Good<T>(Read<T> read)
        where T : class => read.Value ?? throw new RefusedException(read.ToText());
}
