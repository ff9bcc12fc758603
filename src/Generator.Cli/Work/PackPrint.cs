using Generator.Library.Files;
using Generator.Paperwork;
using Generator.Paperwork.Printing;

namespace Generator.Cli.Work;

/// <summary>Prints the pack with a browser where there is one; where there is none everything else is made all the same, and it is said.</summary>
internal static class PackPrint
{
    public static void Make(Desk desk, string folder, PaperSource source, int width)
    {
        var file = Path.Combine(folder, PackPage.FileName);
        try
        {
            if (desk.Printer() is not { } print)
            {
                Missing(desk, file, "there is no Chromium or Chrome on the search path");
                return;
            }

            var pdf = print(PackPage.Of(source), desk.Stop);
            RoutineFiles.Write(file, stream => stream.Write(pdf));
            desk.Out.WriteLine($"{PackPage.FileName.PadRight(width)}  everybody: the routine and all text papers, to print");
        }
        catch (PrintException error)
        {
            Missing(desk, file, error.Message);
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            Missing(desk, file, "it cannot be written");
        }
    }

    private static void Missing(Desk desk, string file, string why)
    {
        desk.Err.WriteLine($"{PackPage.FileName} is not made: {why}. All other papers are.");
        desk.Err.WriteLine($"  Maybe install Chromium, or open routine.html in a browser and print it; --no-pdf leaves it out.{(File.Exists(file) ? $" The {PackPage.FileName} in the folder is an older one." : string.Empty)}");
    }
}
