using Generator.Paperwork.Html;
using Generator.Paperwork.Text;
using Generator.Rules.Sight;

namespace Generator.Paperwork.Cameras;

/// <summary>The camera plan as a page of the house: a plan with cones, and what each set-up sees of every planned miss.</summary>
public static class CameraPage
{
    public const string FileName = "camera-plan.html";

    public static string Of(PaperSource source, CameraPlan plan) =>
        HtmlPage.Of<CameraBody>("Camera plan: " + Page.Clean(source.Brief.Title), View(source, plan), source.Head);

    /// <summary>What the page shows.</summary>
    internal static CameraView View(PaperSource source, CameraPlan plan) => new(source, plan, source.Acted);
}
