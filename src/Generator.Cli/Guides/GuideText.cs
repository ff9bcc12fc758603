using System.Text;
using Generator.Paperwork.Text;
using Markdig;
using Markdig.Extensions.Tables;
using Markdig.Syntax;
using Block = Markdig.Syntax.Block;
using Markdig.Syntax.Inlines;

namespace Generator.Cli.Guides;

/// <summary>A page in Markdown as text of the house's width, or as HTML.</summary>
internal static class GuideText
{
    private const int WidestName = 22;

    private static readonly MarkdownPipeline Pipeline = new MarkdownPipelineBuilder().UsePipeTables().DisableHtml().Build();

    /// <summary>As text, every line with its line feed.</summary>
    public static string Of(string page)
    {
        var text = new StringBuilder();
        foreach (var block in Document(page))
        {
            var lines = Lines(block).ToList();
            if (text.Length > 0 && lines.Count > 0)
            {
                text.Append('\n');
            }

            lines.ForEach(l => text.Append(l).Append('\n'));
        }

        return text.ToString();
    }

    /// <summary>As HTML; what Markdown would take for HTML stays text. Examples wider than a phone are reached and moved by keys, too.</summary>
    public static string Html(string page) => Document(page).ToHtml(Pipeline).ReplaceLineEndings("\n").Replace("<pre>", "<pre tabindex=\"0\">", StringComparison.Ordinal);

    /// <summary>Without the marks by which tests find examples.</summary>
    private static MarkdownDocument Document(string page) =>
        Markdown.Parse(string.Concat(page.Split('\n').Where(l => !l.StartsWith("<!--", StringComparison.Ordinal)).Select(l => l + "\n")), Pipeline);

    private static IEnumerable<string> Lines(Block block) => block switch
    {
        HeadingBlock { Level: 1 } title => [.. Page.Wrap(Words(title.Inline), Page.Width), Page.Line('=')],
        HeadingBlock heading => [Words(heading.Inline), new string('-', Page.LengthOf(Words(heading.Inline)))],
        ParagraphBlock paragraph => Page.Wrap(Words(paragraph.Inline), Page.Width),
        ListBlock list => list.OfType<ListItemBlock>().SelectMany(item => Page.Hang("- ", string.Join(' ', item.OfType<ParagraphBlock>().Select(p => Words(p.Inline))))),
        CodeBlock code => code.Lines.ToString().ReplaceLineEndings("\n").Split('\n'),
        Table table => Rows(table),
        _ => [],
    };

    private static IEnumerable<string> Rows(Table table)
    {
        var rows = table.OfType<TableRow>().Select(r => r.OfType<TableCell>().Select(c => string.Join(' ', c.OfType<ParagraphBlock>().Select(p => Words(p.Inline)))).ToList()).ToList();
        var columns = rows.Max(r => r.Count);
        var widths = Enumerable.Range(0, columns).Select(i => rows.Max(r => i < r.Count ? Page.LengthOf(r[i]) : 0)).ToArray();
        widths[0] = Math.Min(widths[0], WidestName);
        Narrow(widths, Page.Width - (2 * columns));
        return rows.SelectMany((row, i) => Page.Row(2, [.. row.Select((cell, k) => (cell, widths[k]))]).Concat(i == 0 ? [new string('-', Page.Width)] : []));
    }

    /// <summary>Takes from the widest column but the first until all fit.</summary>
    private static void Narrow(int[] widths, int room)
    {
        while (widths.Sum() > room)
        {
            var widest = Enumerable.Range(1, widths.Length - 1).MaxBy(i => widths[i]);
            widths[widest]--;
        }
    }

    private static string Words(ContainerInline? inline) => string.Concat((inline ?? []).Select(i => i switch
    {
        LiteralInline literal => literal.Content.ToString(),
        CodeInline code => code.Content,
        LineBreakInline => " ",
        ContainerInline container => Words(container),
        _ => string.Empty,
    }));
}
