using Generator.Domain;
using Generator.Library;
using Generator.Library.Files;
using Generator.Library.Files.Notes;
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

    public static Brief Brief(string path, Book book, Desk desk) => Good(BriefReader.Parse(Source(path, desk), book));

    public static Routine Routine(string path, Brief? brief, Book book, Desk desk) => Routine(Source(path, desk), brief, book, desk);

    /// <summary>The routine; where neither the file nor anybody else gives its brief, that is said.</summary>
    public static Routine Routine(SourceFile source, Brief? brief, Book book, Desk desk)
    {
        var routine = Good(RoutineReader.Parse(source, book, brief));
        if (brief is null && RoutineReader.IsCsv(source))
        {
            desk.Err.WriteLine($"{source.Name} holds no brief: everything but names and opening places is taken by default, tempo, floor, heights and skills too.");
            desk.Err.WriteLine("  Maybe add --brief and the name of the brief, or of a routine in JSON that holds it.");
        }

        return routine;
    }

    /// <summary>The sketch that notes hold; any other file is refused.</summary>
    public static ReadSketch Notes(string path, Brief? brief, Book book, Desk desk)
    {
        var source = Source(path, desk);
        return NotesReader.IsNotes(source) ? Good(NotesReader.Parse(source, book, brief)) : throw new RefusedException(
            $"{source.Name}: these are no notes: no line begins with a name and a colon.", "Maybe write lines such as \"Bruno: wide swing > low parry\"; a whole routine is mended by generator repair.");
    }

    private static T Good<T>(Read<T> read)
        where T : class => read.Value ?? throw new RefusedException(read.ToText());
}
