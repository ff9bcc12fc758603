using Generator.Library.Files;
using Generator.Paperwork;
using Generator.Paperwork.Printing;

namespace Generator.Cli.Work;

/// <summary>Prints the pack with a browser where there is one; where there is none everything else is made all the same, and it is said.</summary>
internal static class PackPrint
{
    /// <returns>Whether it was made.</returns>
    public static bool Make(Desk desk, string folder, PaperSource source, int width)
    {
        var file = Path.Combine(folder, PackPage.FileName);
        try
        {
            if (desk.Printer() is not { } print)
            {
                return Missing(desk, "there is no Chromium or Chrome on the search path");
            }

            var pdf = print(PackPage.Of(source), desk.Stop);
            RoutineFiles.Write(file, stream => stream.Write(pdf));
            PaperList.Tell(desk, PackPage.FileName, width, $"everybody: the routine and all text papers, to print on {source.Options.Page.Css}");
            return true;
        }
        catch (PrintException error)
        {
            return Missing(desk, error.Message);
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            return Missing(desk, "it cannot be written");
        }
    }

    private static bool Missing(Desk desk, string why)
    {
        desk.Err.WriteLine($"{PackPage.FileName} is not made: {why}. All other papers are.");
        desk.Err.WriteLine($"  Maybe install Chromium, or open routine.html in a browser and print it; --no-pdf leaves it out.");
        return false;
    }
}
