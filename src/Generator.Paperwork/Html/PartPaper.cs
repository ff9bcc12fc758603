namespace Generator.Paperwork.Html;

/// <summary>What one performer takes home: only their own moves.</summary>
public static class PartPaper
{
    /// <param name="view">The routine.</param>
    /// <param name="performer">Number in the brief, from 0; −1 for the hero.</param>
    public static string Of(RoutineView view, int performer)
    {
        var part = new PartView(view, performer);
        return HtmlPage.Of<PartBody>($"{part.Name}: {view.Title}", part, view.Head);
    }
}
