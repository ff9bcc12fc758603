namespace Generator.Paperwork.Html;

/// <summary><c>routine.html</c>: the whole routine on one page.</summary>
public static class RoutinePaper
{
    public const string FileName = "routine.html";

    public static string Of(RoutineView view) => HtmlPage.Of<RoutineBody>(view.Title, view, view.Head, PlayerPlate.Script);
}
