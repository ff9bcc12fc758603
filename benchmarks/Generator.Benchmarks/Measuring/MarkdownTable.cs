using System.Text;

namespace Generator.Benchmarks.Measuring;

/// <summary>A table of a report, built row by row.</summary>
internal sealed class MarkdownTable(params string[] heads)
{
    private readonly StringBuilder text = new(Line(heads) + Line(heads.Select(_ => "---")));

    public void Row(params IEnumerable<string> cells) => text.Append(Line(cells));

    public override string ToString() => text.ToString();

    private static string Line(IEnumerable<string> cells) => $"| {string.Join(" | ", cells)} |\n";
}
