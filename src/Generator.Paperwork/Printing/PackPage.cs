using System.Text;
using Generator.Paperwork.Html;

namespace Generator.Paperwork.Printing;

/// <summary>The page that is printed as <see cref="FileName"/>: the routine with its plans, then every paper that is plain text.</summary>
public static class PackPage
{
    public const string FileName = "pack.pdf";

    public static string Of(PaperSource source)
    {
        var sheets = Pack.Of(source).Where(p => p.FileName.EndsWith(".txt", StringComparison.Ordinal)).Select(p => Text(p, source)).ToList();
        return HtmlPage.Of<PackBody>(source.Brief.Title, new PackView(new RoutineView(source), sheets), PaperHead.Of(source), paper: source.Options.Page);
    }

    private static string Text(IPaper paper, PaperSource source)
    {
        using var stream = new MemoryStream();
        paper.Write(source, stream);
        return Encoding.UTF8.GetString(stream.ToArray());
    }
}
