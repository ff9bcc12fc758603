namespace Generator.Paperwork.Html;

/// <summary>A page to be read that is no paper of a routine: the house's styles round a text.</summary>
public static class ReadingPage
{
    private const string Style = """
        body { max-width: 60rem; }
        main > h1 { margin-top: 3rem; }
        main > h2 { margin-top: 2rem; }
        main ul { list-style: disc; padding-left: 1.2rem; margin-bottom: .8rem; }
        table { border-collapse: collapse; width: 100%; margin-bottom: 1rem; }
        th, td { text-align: left; vertical-align: top; padding: .35rem .6rem .35rem 0; border-bottom: 1px solid var(--faint); }
        pre { background: var(--raised); padding: .8rem; overflow-x: auto; overflow-wrap: normal; }
        code { font-family: ui-monospace, "DejaVu Sans Mono", monospace; font-size: .92em; }

        """;

    /// <summary>The whole page, which needs nothing from outside.</summary>
    /// <param name="title">Of the page.</param>
    /// <param name="body">HTML that was made here; nothing in it comes from outside.</param>
    public static string Of(string title, string body) =>
        HtmlPage.Shell(title, HtmlPage.Style + Style.ReplaceLineEndings("\n"), $"<main>\n{body}</main>", null);
}
