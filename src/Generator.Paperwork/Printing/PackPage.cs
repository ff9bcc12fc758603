using Generator.Paperwork.Html;
using Generator.Paperwork.Text;

namespace Generator.Paperwork.Printing;

/// <summary>The page that is printed as <see cref="FileName"/>: the routine with its plans, then every paper that is plain text.</summary>
public static class PackPage
{
    public const string FileName = "pack.pdf";

    public static string Of(PaperSource source)
    {
        var sheets = Pack.Of(source).OfType<SheetPaper>().Select(p => p.Whole(source)).ToList();
        return HtmlPage.Of<PackBody>(source.Brief.Title, new PackView(new RoutineView(source), sheets), source.Head, paper: source.Options.Page);
    }
}
