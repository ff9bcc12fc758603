using Generator.Cli;
using Generator.Cli.Work;
using Generator.Domain;
using Generator.Library;
using Generator.Solver;
using Generator.Solver.Questions;

namespace Generator.Cli.Tests;

/// <summary>Runs commands in this process, with a folder of its own for files.</summary>
internal sealed class Rig : IDisposable
{
    /// <summary>The library is read once for all commands of all tests, as the program reads it before it works out its line; nothing ever changes it.</summary>
    static Rig() => EarlyBook.Begin(["audit"]);

    public Rig() => Directory.CreateDirectory(Folder);

    /// <summary>The library that the commands work with.</summary>
    public static Book Book => Inputs.Book(null);

    public string Folder { get; } = Path.Combine(Path.GetTempPath(), "generator-" + Path.GetRandomFileName());

    /// <summary>Text on standard input.</summary>
    public string Input { get; init; } = string.Empty;

    public CancellationToken Stop { get; init; }

    /// <summary>Given to searches that end by themselves, which takes long on a busy machine; null for what is usual.</summary>
    public TimeSpan? Patience { get; init; }

    /// <summary>Told of every better routine and its points while a search goes on.</summary>
    public Action<Func<Routine>, int> Keep { get; init; } = (_, _) => { };

    /// <summary>Stands in for the search; a test that does not set it must not draft.</summary>
    public Func<Brief, Book, DraftOptions, IProgress<DraftProgress>, CancellationToken, DraftResult> Draft { get; init; } =
        (_, _, _, _, _) => throw new InvalidOperationException("Nothing was to be drafted.");

    /// <summary>A terminal on which progress moves; null for none.</summary>
    public Spectre.Console.IAnsiConsole? Screen { get; init; }

    /// <summary>Stands in for the browser that prints: the page itself.</summary>
    public Func<Func<string, CancellationToken, byte[]>?> Printer { get; init; } = () => (page, _) => System.Text.Encoding.UTF8.GetBytes(page);

    /// <summary>Stands in for the browser that draws: the size and the page itself.</summary>
    public Func<Func<string, int, int, CancellationToken, byte[]>?> Camera { get; init; } = () => (page, width, height, _) => System.Text.Encoding.UTF8.GetBytes($"{width} {height} {page}");

    /// <summary>Puts a file into the folder and returns its path.</summary>
    public string File(string name, string text)
    {
        var path = Path.Combine(Folder, name);
        System.IO.File.WriteAllText(path, text);
        return path;
    }

    /// <summary>Runs one command; the folder is printed as FOLDER, so that texts are the same everywhere.</summary>
    public Answer Run(params string[] args)
    {
        using var output = new StringWriter { NewLine = "\n" };
        using var errors = new StringWriter { NewLine = "\n" };
        using var input = new StringReader(Input);
        var code = CommandLine.Run(args, new Desk { In = input, Out = output, Err = errors, Stop = Stop, Patience = Patience, Keep = Keep, Draft = Draft, Printer = Printer, Camera = Camera, Screen = () => Screen });
        return new Answer(code, Named(output), Named(errors));
    }

    public void Dispose() => Directory.Delete(Folder, recursive: true);

    private string Named(StringWriter text) => text.ToString().Replace(Folder + Path.DirectorySeparatorChar, "FOLDER/", StringComparison.Ordinal);
}
