namespace Generator.Paperwork.Text;

/// <summary>A piece of a paper, from which both its plain text and its printed page are made.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Text">Its words; empty for rules, gaps and rows.</param>
/// <param name="Mark">What stands before them: "[ ]" with its indent; behind a heading its remark.</param>
/// <param name="Cells">Text and width in letters of each column of a row.</param>
public sealed record Block(BlockKind Kind, string Text, string Mark, IReadOnlyList<(string Text, int Width)> Cells)
{
    private const int Indent = 2;

    /// <summary>A line to sign on: 5 cm and more, printed at ten or twelve letters an inch.</summary>
    public const string Blank = "________________________";

    public static Block Gap { get; } = new(BlockKind.Gap, string.Empty, string.Empty, []);

    /// <summary>What parts the head of a paper from its body.</summary>
    public static Block Rule { get; } = new(BlockKind.Rule, string.Empty, string.Empty, []);

    public static Block Title(string text) => new(BlockKind.Title, text, string.Empty, []);

    public static Block Prose(string text) => new(BlockKind.Prose, text, string.Empty, []);

    public static Block Caution(string text) => new(BlockKind.Caution, text, string.Empty, []);

    /// <summary>A heading in sentence case, which text has in capitals, and a remark behind it.</summary>
    public static Block Heading(string text, string remark = "") => new(BlockKind.Heading, text, remark, []);

    /// <summary>Words that hang under their first letter.</summary>
    /// <param name="mark">What stands before them, with its indent; no words give nothing.</param>
    /// <param name="text">The words.</param>
    public static Block Item(string mark, string text) => new(BlockKind.Item, text, mark, []);

    /// <summary>The heads of the columns below.</summary>
    public static Block Columns(params IReadOnlyList<(string Text, int Width)> cells) => new(BlockKind.Columns, string.Empty, string.Empty, cells);

    public static Block Row(params IReadOnlyList<(string Text, int Width)> cells) => new(BlockKind.Row, string.Empty, string.Empty, cells);

    /// <summary>A line on which somebody writes.</summary>
    public static Block Field(string label) => new(BlockKind.Field, label, string.Empty, []);

    /// <summary>A line on which somebody signs behind a remark.</summary>
    public static Block Sign(string label, string remark) => new(BlockKind.Field, label, remark, []);

    /// <summary>Lines that are text and nothing else.</summary>
    public static Block Typed(string text) => new(BlockKind.Typed, text, string.Empty, []);

    /// <summary>The lines of plain text.</summary>
    public IEnumerable<string> Lines => Kind switch
    {
        BlockKind.Title or BlockKind.Prose or BlockKind.Caution => Page.Wrap(Text, Page.Width),
        BlockKind.Heading => [Mark.Length == 0 ? Text.ToUpperInvariant() : $"{Text.ToUpperInvariant()}  {Mark}"],
        BlockKind.Item => Page.Hang(Mark, Text),
        BlockKind.Columns or BlockKind.Row => Page.Row(Indent, Cells),
        BlockKind.Field when Mark.Length == 0 => Page.Row(Indent, (Text, 24), (new string('_', 44), 44)),
        BlockKind.Field => Page.Row(Indent, (Text, 24), (Mark, 14), ("signed " + Blank, 32)),
        BlockKind.Rule => [Page.Line('=')],
        BlockKind.Typed => Text.TrimEnd('\n').Split('\n'),
        _ => [string.Empty],
    };

    /// <summary>The whole text of a paper, ending with a line feed.</summary>
    public static string TextOf(IEnumerable<Block> blocks) => string.Concat(blocks.SelectMany(b => b.Lines).Select(l => l + "\n"));
}
