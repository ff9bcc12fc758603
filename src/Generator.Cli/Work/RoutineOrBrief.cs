using Generator.Domain;
using Generator.Library;
using Generator.Library.Files;
using Generator.Library.Reading;

namespace Generator.Cli.Work;

/// <summary>A file that may be a brief or a routine: one with moves (or in CSV) is a routine.</summary>
/// <param name="Brief">The brief, or that of the routine.</param>
/// <param name="Routine">Null when the file is a brief.</param>
/// <param name="IsChosen">It is a brief whose marks were chosen for it.</param>
internal sealed record RoutineOrBrief(Brief Brief, Routine? Routine, bool IsChosen = false)
{
    /// <exception cref="RefusedException">The file is missing or wrong.</exception>
    public static RoutineOrBrief Read(string command, string? path, string? briefPath, Book book, Desk desk, int? seed = null)
    {
        if (path is null)
        {
            throw new RefusedException($"generator {command}: FILE is missing.", "Maybe write the name of a brief or of a routine, or - for standard input.");
        }

        Pairs.Check(command, path, briefPath);
        var source = Inputs.Source(path, desk);
        if (IsRoutine(source))
        {
            var routine = Pairs.Routine(source, Pairs.Brief(briefPath, new Lazy<SourceFile>(() => source), book, desk, seed), book, desk);
            return new RoutineOrBrief(routine.Brief, routine);
        }

        if (briefPath is not null)
        {
            throw new RefusedException($"generator {command}: {path} is a brief itself.", "Maybe leave out --brief.");
        }

        var (brief, isChosen) = Inputs.Brief(source, book, desk, seed);
        return new RoutineOrBrief(brief, null, isChosen);
    }

    private static bool IsRoutine(SourceFile source)
    {
        if (source.Name.EndsWith(".csv", StringComparison.OrdinalIgnoreCase) || source.Text.TrimStart('\uFEFF', ' ', '\t', '\r', '\n') is not ['{', ..])
        {
            return true;
        }

        var problems = new ProblemList();
        return StrictJson.Object(source.Name, source.Text, problems) is { } root && (root.Has("routine") || (root.Has("moves") && !root.Has("tempo")));
    }
}
