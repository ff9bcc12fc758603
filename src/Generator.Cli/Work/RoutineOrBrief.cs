using Generator.Domain;
using Generator.Library;
using Generator.Library.Files;
using Generator.Library.Reading;

namespace Generator.Cli.Work;

/// <summary>A file that may be a brief or a routine: one with moves (or in CSV) is a routine.</summary>
/// <param name="Brief">The brief, or that of the routine.</param>
/// <param name="Routine">Null when the file is a brief.</param>
internal sealed record RoutineOrBrief(Brief Brief, Routine? Routine)
{
    /// <exception cref="RefusedException">The file is missing or wrong.</exception>
    public static RoutineOrBrief Read(string command, string? path, string? briefPath, Book book, Desk desk)
    {
        if (path is null)
        {
            throw new RefusedException($"generator {command}: FILE is missing.", "Maybe write the name of a brief or of a routine, or - for standard input.");
        }

        Pairs.Check(command, path, briefPath);
        var source = Inputs.Source(path, desk);
        if (IsRoutine(source))
        {
            var routine = Pairs.Routine(source, Pairs.Brief(briefPath, book, desk), book, desk);
            return new RoutineOrBrief(routine.Brief, routine);
        }

        if (briefPath is not null)
        {
            throw new RefusedException($"generator {command}: {path} is a brief itself.", "Maybe leave out --brief.");
        }

        var read = BriefReader.Parse(source, book);
        return new RoutineOrBrief(Inputs.Remarked(read, desk), null);
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
