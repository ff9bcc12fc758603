namespace Generator.Paperwork.Html;

/// <summary>The pages of the pack: the whole routine, and a part for each performer.</summary>
internal static class HtmlPapers
{
    public static IReadOnlyList<IPaper> Of(PaperSource source)
    {
        var view = new Lazy<RoutineView>(() => new RoutineView(source));
        var names = Text.PartNames.Of(source.Brief);
        return
        [
            new TextPaper(RoutinePaper.FileName, "everybody: plan, tracks, moves and playback, for phone and print", _ => RoutinePaper.Of(view.Value)),
            .. names.Select((name, i) => new TextPaper($"part-{name}.html", "the part of " + Text.Page.Clean(Text.AllyWords.Everybody(source.Brief).ElementAt(i).Name), _ => PartPaper.Of(view.Value, i - 1))),
        ];
    }
}
