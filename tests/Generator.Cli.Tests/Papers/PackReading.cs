using System.Text;
using System.Text.RegularExpressions;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;

namespace Generator.Cli.Tests.Papers;

/// <summary>Reads the printed pack with PdfPig, from letters and where they stand.</summary>
internal static partial class PackReading
{
    /// <summary>What the pages of the routine say in print.</summary>
    public const string Pages = "pack.pdf, routine";

    /// <summary>What the other papers say in print.</summary>
    public const string Sheets = "pack.pdf, other papers";

    public static readonly string[] All = [Pages, Sheets];

    /// <summary>Points at the upper and lower edge in which warning and foot stand.</summary>
    private const double Edge = 45;

    /// <summary>Lines on every page, foot and warning apart: whoever turns to it finds more than a remnant of the one before.</summary>
    private const int FewestLines = 6;

    /// <summary>Room between two words that stand in different columns, as a share of the font size.</summary>
    private const double Column = 0.55;

    /// <summary>What the pack says.</summary>
    /// <param name="bytes">The file.</param>
    /// <param name="cast">Names, the hero first.</param>
    public static IEnumerable<Fact> Of(byte[] bytes, IReadOnlyList<string> cast)
    {
        using var pdf = PdfDocument.Open(bytes);
        var facts = new List<Fact>();
        var sheets = new List<(string Paper, List<string> Lines)>();
        foreach (var page in pdf.GetPages())
        {
            var words = page.GetWords().ToList();
            var foot = Joined(words.Where(w => w.BoundingBox.Bottom < Edge));
            facts.Add(new Fact(Pages, "page", $"pack {page.Number}", foot.EndsWith($"page {page.Number} of {pdf.NumberOfPages}", StringComparison.Ordinal) ? "numbered" : foot));
            facts.Add(new Fact(Pages, "page", $"pack {page.Number}", "numbered"));
            facts.AddRange(TextReading.Head(foot).Where(f => f.Topic == "version").Select(f => f with { Paper = Pages }));
            facts.Add(new Fact(Pages, "forbidden", "all", words.Exists(w => w.BoundingBox.Bottom > page.Height - Edge && w.Text == "PERFORMED") ? "yes" : "no"));
            var body = words.Where(w => w.BoundingBox.Bottom > Edge && w.BoundingBox.Bottom < page.Height - Edge).ToList();
            var lines = Lines(body).ConvertAll(Spaced);
            facts.Add(new Fact(Pages, "lines on a page", $"pack {page.Number}", lines.Count >= FewestLines ? "enough" : string.Join(" / ", lines)));
            facts.Add(new Fact(Pages, "lines on a page", $"pack {page.Number}", "enough"));
            if (lines.Take(3).Select(PaperOf).FirstOrDefault(p => p is not null) is { } paper)
            {
                sheets.Add((paper, []));
            }

            if (sheets.Count > 0)
            {
                sheets[^1].Lines.AddRange(lines);
            }
            else
            {
                facts.AddRange(Drawn(body, page.Width, cast));
                facts.AddRange(Ends(body, page));
            }
        }

        facts.Add(new Fact(Pages, "number of phrases", "all", facts.Count(f => f.Topic == "phrase").ToString(System.Globalization.CultureInfo.InvariantCulture)));
        return facts.Concat(sheets.SelectMany(s => TextReading.Body(s.Paper, string.Join('\n', s.Lines), cast)).Select(f => f with { Paper = Sheets }));
    }

    /// <summary>No column ends with the heading of a move or of a finding: what it says of it would stand on the next page.</summary>
    private static IEnumerable<Fact> Ends(IReadOnlyList<Word> words, Page page) => words.GroupBy(w => w.BoundingBox.Left > page.Width / 2).Select(c => Joined(Lines(c)[^1])).SelectMany(end => new[]
    {
        new Fact(Pages, "end of a column", $"pack {page.Number}", Heading().IsMatch(end) ? end : "whole"),
        new Fact(Pages, "end of a column", $"pack {page.Number}", "whole"),
    });

    private static string? PaperOf(string title) => title switch
    {
        "Teaching plan" => "teaching-plan.txt",
        "Risk assessment" => "risk-assessment.txt",
        "Fight call" => "fight-call.txt",
        "Camera plan" => "camera-plan.txt",
        "Cue list" => "cue-list.txt",
        "Shape" => "shape.txt",
        _ => null,
    };

    /// <summary>The words of a line, those of different columns farther apart, behind the indent of a typed row.</summary>
    private static string Spaced(List<Word> line)
    {
        var text = new StringBuilder(line.Count > 1 ? "  " : string.Empty);
        for (var i = 0; i < line.Count; i++)
        {
            text.Append(i == 0 ? string.Empty : line[i].BoundingBox.Left - line[i - 1].BoundingBox.Right > Column * line[i].Letters[0].PointSize ? "  " : " ").Append(Plain(line[i].Text));
        }

        return line.Count > 1 && PaperOf(text.ToString().Trim()) is not null ? text.ToString().Trim() : text.ToString();
    }

    /// <summary>Without the letters that a font joins.</summary>
    private static string Plain(string text) => text.Replace("ﬀ", "ff", StringComparison.Ordinal).Replace("ﬁ", "fi", StringComparison.Ordinal).Replace("ﬂ", "fl", StringComparison.Ordinal).Replace("ﬃ", "ffi", StringComparison.Ordinal);

    /// <summary>The moves of a phrase: column by column, bold words marked.</summary>
    private static IEnumerable<Fact> Drawn(IReadOnlyList<Word> words, double width, IReadOnlyList<string> cast)
    {
        foreach (var column in words.GroupBy(w => w.BoundingBox.Left > width / 2).OrderBy(g => g.Key))
        {
            var lines = Lines(column);
            var large = lines.SelectMany(l => l.Zip(l.Skip(1))).Where(p => p.First.Text is "count" or "click" && IsLarge(p.First)).ToList();
            var said = lines.SelectMany(l => l).Except(large.SelectMany(p => new[] { p.First, p.Second })).Where(w => w.Text.Any(char.IsLetterOrDigit) && !Sign().IsMatch(w.Text));
            var text = Plain(string.Join(' ', said.Select(w => (IsBold(w) ? "*" : string.Empty) + w.Text)));
            foreach (Match phrase in Phrase().Matches(text))
            {
                yield return new Fact(Pages, "phrase", phrase.Groups["number"].Value, phrase.Groups["counts"].Value);
            }

            // The count stands in large letters beside the heading of its move, a little higher or lower.
            var heads = lines.SelectMany(l => l.Zip(l.Skip(1))).Where(p => p.First.Text == "Move" && p.Second.Text.EndsWith(':')).Select(p => p.Second).ToList();
            var counts = large.Select(p => (At: p.First, Text: p.First.Text == "click" ? "click " + p.Second.Text : p.Second.Text)).ToList();
            foreach (var head in heads)
            {
                var count = counts.MinBy(c => Math.Abs(c.At.BoundingBox.Bottom - head.BoundingBox.Bottom));
                yield return new Fact(Pages, "count of a move", head.Text.TrimEnd(':'), count.Text ?? string.Empty);
            }

            // The heading of the next phrase may follow a move, in bold as its cells are.
            foreach (Match move in Move(cast[0]).Matches(Phrase().Replace(text, "|")))
            {
                var number = move.Groups["number"].Value;
                string Said(string group) => move.Groups[group].Value.Replace("*", string.Empty, StringComparison.Ordinal).Trim();
                yield return new Fact(Pages, "who", number, Said("who").EndsWith(" alone", StringComparison.Ordinal) ? "nobody" : Said("who"));
                yield return new Fact(Pages, "attack", number, Said("attack"));
                yield return new Fact(Pages, "technique", number, Said("technique"));
                yield return new Fact(Pages, "reaction", number, Said("reaction"));
            }
        }
    }

    private static List<List<Word>> Lines(IEnumerable<Word> words)
    {
        var lines = new List<List<Word>>();
        foreach (var word in words.OrderByDescending(w => w.Letters[0].StartBaseLine.Y))
        {
            if (lines.Count == 0 || lines[^1][0].Letters[0].StartBaseLine.Y - word.Letters[0].StartBaseLine.Y > 2.5)
            {
                lines.Add([]);
            }

            lines[^1].Add(word);
        }

        return [.. lines.Select(l => l.OrderBy(w => w.BoundingBox.Left).ToList())];
    }

    private static string Joined(IEnumerable<Word> words) => string.Join(' ', Lines(words).SelectMany(l => l).Select(w => Plain(w.Text)));

    private static bool IsBold(Word word) => word.FontName?.Contains("Bold", StringComparison.OrdinalIgnoreCase) == true;

    private static bool IsLarge(Word word) => IsBold(word) && word.Letters[0].PointSize > 12;

    /// <summary>Heading, then attack, the hero's technique and the reaction, each in bold behind its label.</summary>
    private static Regex Move(string hero) => new(
        @"Move (?<number>\d+):(?<who>( \*\S+)+)(?<rest>( (?!Move |Attack \*|" + Regex.Escape(hero) + @" \*)\S+)*?)( Attack(?<attack>( \*\S+)+))? " + Regex.Escape(hero) + @"(?<technique>( \*\S+)+)( Reaction(?<reaction>( \*\S+)+))?",
        RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture,
        TimeSpan.FromMinutes(10));

    [GeneratedRegex(@"\*Phrase \*(?<number>\d+) counts (?<counts>(click )?-?\d+&? to (click )?-?\d+&?)", RegexOptions.CultureInvariant | RegexOptions.NonBacktracking)]
    private static partial Regex Phrase();

    [GeneratedRegex(@"^(\S+ )?(unsafe|broken|rough|note) [a-z-]+, (move \d+, )?count|\bMove \d+:", RegexOptions.CultureInvariant)]
    private static partial Regex Heading();

    [GeneratedRegex(@"^(H|A\d)$", RegexOptions.CultureInvariant | RegexOptions.NonBacktracking)]
    private static partial Regex Sign();
}
