using Generator.Library.Files;
using Generator.Paperwork;
using Generator.Paperwork.Printing;

namespace Generator.Cli.Work;

/// <summary>Prints pack and posters with a browser where there is one; where there is none everything else is made all the same, and it is said.</summary>
internal static class PackPrint
{
    /// <returns>Names of what was made.</returns>
    public static IReadOnlyList<string> Make(Desk desk, string folder, PaperSource source, int width)
    {
        IReadOnlyList<(string File, string Purpose, Func<string> Page)> prints =
        [
            .. PosterSize.Of(source.Options.Page).Select(size => (size.FileName, $"the wall, to print on {size.Name}", new Func<string>(() => PosterPage.Of(source, size)))),
            (PackPage.FileName, $"everybody: the routine and all papers that are read, to print on {source.Options.Page.Css}", () => PackPage.Of(source)),
        ];
        var made = new List<string>();
        try
        {
            if (desk.Printer() is not { } print)
            {
                return Missing(desk, prints, made, "there is no Chromium or Chrome on the search path");
            }

            foreach (var (file, purpose, page) in prints)
            {
                var pdf = print(page(), desk.Stop);
                RoutineFiles.Write(Path.Combine(folder, file), stream => stream.Write(pdf));
                PaperList.Tell(desk, file, width, purpose);
                made.Add(file);
            }

            return made;
        }
        catch (PrintException error)
        {
            return Missing(desk, prints, made, error.Message);
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            return Missing(desk, prints, made, "it cannot be written");
        }
    }

    private static List<string> Missing(Desk desk, IEnumerable<(string File, string Purpose, Func<string> Page)> prints, List<string> made, string why)
    {
        var missing = prints.Select(p => p.File).Except(made).ToList();
        desk.Err.WriteLine($"{string.Join(", ", missing)} {(missing.Count == 1 ? "is" : "are")} not made: {why}. All other papers are.");
        desk.Err.WriteLine("  Maybe install Chromium, or open routine.html and wall.html in a browser and print them; --no-pdf leaves all PDF out.");
        return made;
    }
}
