using System.Text;

namespace Generator.Paperwork.Text;

/// <summary>A paper that is plain text, under the head that all of them bear, and cut into printed pages; the pack prints it as a page of the house.</summary>
/// <param name="fileName">Name of the file, without folder.</param>
/// <param name="purpose">Who it is for.</param>
/// <param name="blocks">What it says below the head.</param>
public sealed class SheetPaper(string fileName, string purpose, Func<PaperSource, IEnumerable<Block>> blocks) : IPaper
{
    /// <summary>Lines on a printed page at six an inch and half an inch of margin, on Letter; A4 has room for more. Common practice, no source.</summary>
    public const int LinesOfAPage = 60;

    /// <summary>A page may end this many lines early where that keeps together what belongs together.</summary>
    private const int Early = 15;

    /// <summary>The last page has at least so many lines.</summary>
    private const int Fewest = 6;

    public string FileName { get; } = fileName;

    public string Purpose { get; } = purpose;

    public void Write(PaperSource source, Stream stream) => stream.Write(Encoding.UTF8.GetBytes(string.Join('\f', Pages(source))));

    /// <summary>What it says, piece by piece.</summary>
    public IReadOnlyList<Block> Blocks(PaperSource source) => [.. blocks(source)];

    /// <summary>The whole text on one page without end.</summary>
    public string Whole(PaperSource source) => source.Head.Above(Block.TextOf(blocks(source)));

    /// <summary>Each page ends with title, version and its number; a form feed parts it from the next.</summary>
    private IEnumerable<string> Pages(PaperSource source)
    {
        var lines = Whole(source).TrimEnd('\n').Split('\n');
        var room = LinesOfAPage - 1 - Foot(source.Head, 99, 99).Count;
        var pages = new List<IReadOnlyList<string>>();
        for (var from = 0; from < lines.Length; from += pages[^1].Count)
        {
            pages.Add(lines[from..(from + Fitting(lines.AsSpan(from), room))]);
        }

        return pages.Select((page, i) => string.Concat(page.Append(string.Empty).Concat(Foot(source.Head, i + 1, pages.Count)).Select(l => l + "\n")));
    }

    /// <summary>How many of the lines stand on one page: up to an empty line near its end, where there is one.</summary>
    private static int Fitting(ReadOnlySpan<string> lines, int room)
    {
        if (lines.Length <= room)
        {
            return lines.Length;
        }

        room = Math.Min(room, lines.Length - Fewest);
        var empty = lines[(room - Early)..room].LastIndexOf(string.Empty);
        return empty < 0 ? room : room - Early + empty + 1;
    }

    /// <summary>Which page it is stands on one line, whatever else has to be broken; a page that comes away from the first one warns as well.</summary>
    private static IReadOnlyList<string> Foot(PaperHead head, int page, int of)
    {
        IReadOnlyList<string> lines = [.. head.Warning is null ? [] : new[] { $"!!  {PaperHead.Forbidden.ToUpperInvariant()}" }, .. Page.Wrap($"{head.Title}. {head.Identity};", Page.Width)];
        var number = $"page {Words.Number(page)} of {Words.Number(of)}";
        return Page.LengthOf(lines[^1]) + 1 + number.Length <= Page.Width ? [.. lines.SkipLast(1), lines[^1] + " " + number] : [.. lines, number];
    }
}
