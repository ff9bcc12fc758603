using System.Runtime.CompilerServices;
using Generator.Domain;
using Generator.Figures.Poses;
using Generator.Figures.Posing;
using Generator.Library;
using Generator.Library.Files;
using Generator.Library.Loading;
using Generator.Library.Reading;
using Generator.Rules;
using Generator.Rules.Replaying;

namespace Generator.Paperwork.Tests;

/// <summary>A stored routine for the scenario that comes with the program, with the library that comes with it.</summary>
internal static class Ferry
{
    public static Book Book { get; } = LibraryLoader.LoadBundled([]).Value!;

    public static Routine Routine { get; } = Stored("ferry.routine.json");

    public static Scene Scene { get; } = new(Routine.Brief, Book);

    public static IReadOnlyList<Step> Steps { get; } = Replay.Of(Scene, Routine);

    public static PaperSource Source { get; } = PaperSource.Of(Scene, Routine);

    /// <summary>Draws figures with the poses that come with the program.</summary>
    public static Cards Cards { get; } = new(PoseReader.LoadBundled(Book).Value!, Book);

    /// <summary>The same fight with something else in the brief.</summary>
    public static PaperSource With(Func<Brief, Brief> change)
    {
        var routine = Routine with { Brief = change(Routine.Brief) };
        return PaperSource.Of(new Scene(routine.Brief, Book), routine);
    }

    /// <summary>A routine that lies in the folder Data.</summary>
    internal static Routine Stored(string name)
    {
        var problems = new ProblemList();
        var file = SourceFile.Load(Path.Combine(Here(), "Data", name), problems)!;
        var read = RoutineReader.Parse(file, Book, null);
        return read.Value ?? throw new InvalidOperationException(read.ToText());
    }

    private static string Here([CallerFilePath] string caller = "") => Path.GetDirectoryName(caller)!;
}
