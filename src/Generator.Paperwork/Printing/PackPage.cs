using Generator.Paperwork.Cameras;
using Generator.Paperwork.HandOffs;
using Generator.Paperwork.Html;
using Generator.Paperwork.SafetyPapers;
using Generator.Paperwork.Text;

namespace Generator.Paperwork.Printing;

/// <summary>The page that is printed as <see cref="FileName"/>: the routine with its plans, which say what the wall sheet does, then every other paper that is read.</summary>
public static class PackPage
{
    public const string FileName = "pack.pdf";

    public static string Of(PaperSource source)
    {
        var sheets = Pack.Of(source).OfType<SheetPaper>().Select(p => (Sheet: new SheetView(source.Head, p.Blocks(source)), Pictures: p.FileName == HandOffPapers.CameraName ? CameraPage.View(source, source.Options.Cameras!) : null))
            .Where(s => s.Sheet.Blocks[0].Kind == BlockKind.Title).ToList();
        return HtmlPage.Of<PackBody>(source.Brief.Title, new PackView(new RoutineView(source), sheets, new RiskView(source, source.Hazards)), source.Head, paper: source.Options.Page);
    }
}
