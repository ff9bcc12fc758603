using Generator.Paperwork.Text;

namespace Generator.Cli.Work;

/// <summary>The list of papers that a pack consists of: file names, and beside each whom it is for.</summary>
internal static class PaperList
{
    /// <param name="desk">Where it goes.</param>
    /// <param name="file">Name of the file.</param>
    /// <param name="width">Letters of the longest name.</param>
    /// <param name="purpose">Whom it is for.</param>
    public static void Tell(Desk desk, string file, int width, string purpose)
    {
        foreach (var line in Page.Hang(Page.Pad(file, width + 2), purpose))
        {
            desk.Out.WriteLine(line);
        }
    }
}
