namespace Generator.Paperwork.Html;

/// <summary>The playback by itself, as markup for a page that has its own styles.</summary>
public static class PlayerPlate
{
    /// <summary>Each uses what stands before it.</summary>
    private static readonly string[] Parts = ["moments.js", "space.js", "round.js", "views.js", "blows.js", "click.js", "playback.js"];

    /// <summary>The script that moves it; it has a function <c>playback</c>, which begins once the markup is in the page.</summary>
    public static string Script => string.Concat(Parts.Select(HtmlPage.BuiltIn));

    public static string Of(PaperSource source) => HtmlPage.Body<Player>(new(StringComparer.Ordinal) { ["View"] = new RoutineView(source) });
}
