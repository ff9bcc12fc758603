using System.Globalization;
using System.Text.RegularExpressions;

namespace Generator.Cli.Tests.Papers;

/// <summary>Reads text papers as a person would: by their headings, columns and words.</summary>
internal static partial class TextReading
{
    /// <summary>How the wall sheet says that somebody falls.</summary>
    private static readonly string[] Falling = ["goes down to a knee", "falls on the back", "falls on the side", "falls forward", "is thrown over"];

    /// <summary>What each text paper says.</summary>
    /// <param name="paper">File name.</param>
    /// <param name="text">The whole text.</param>
    /// <param name="cast">Names, the hero first.</param>
    public static IEnumerable<Fact> Of(string paper, string text, IReadOnlyList<string> cast)
    {
        var pages = text.Split('\f').Select(p => p.TrimEnd('\n').Split("\n\n")).ToList();
        var feet = pages.Select(p => Flat(p[^1])).ToList();
        return Body(paper, string.Join('\n', pages.Select(p => string.Join("\n\n", p[..^1]))), cast)
            .Concat(feet.SelectMany((f, i) => new[] { new Fact(paper, "version", "all", Version().Match(f).Groups["id"].Value), new Fact(paper, "page", $"{paper} {i}", f.EndsWith($"; page {i + 1} of {feet.Count}", StringComparison.Ordinal) ? "numbered" : f), new Fact(paper, "page", $"{paper} {i}", "numbered") }));
    }

    /// <summary>What it says between head and feet.</summary>
    public static IEnumerable<Fact> Body(string paper, string text, IReadOnlyList<string> cast)
    {
        var lines = text.Split('\n');
        var flat = Flat(text);
        return (paper switch
        {
            "wall.txt" => Wall(lines, cast),
            "cue-list.txt" => Cues(lines, cast),
            "teaching-plan.txt" => Teaching(lines, flat, cast),
            "fight-call.txt" => Named(flat, cast),
            _ => [],
        })
        .Concat(Tagged().Matches(flat).Where(m => paper is not "cue-list.txt" and not "wall.txt").Select(m => new Fact(string.Empty, "count of a move", m.Groups["move"].Value, m.Groups["count"].Value)))
        .Concat(Head(flat))
        .Select(f => f with { Paper = paper });
    }

    /// <summary>Version and warning, as they stand on every paper.</summary>
    public static IEnumerable<Fact> Head(string flat)
    {
        yield return new Fact(string.Empty, "version", "all", Version().Match(flat).Groups["id"].Value);
        var warning = Warning().Match(flat);
        yield return new Fact(string.Empty, "forbidden", "all", warning.Success ? "yes" : "no");
        yield return new Fact(string.Empty, "warning", "all", warning.Success ? warning.Groups["what"].Value.ToUpperInvariant().Replace(" !! ", " ", StringComparison.Ordinal).Replace(" ▲! ", " ", StringComparison.Ordinal) : "none");
    }

    public static string Flat(string text) => string.Join(' ', text.Split([' ', '\n', '\r', '\u00a0'], StringSplitOptions.RemoveEmptyEntries));

    private static IEnumerable<Fact> Named(string flat, IReadOnlyList<string> cast) => cast.Where(n => flat.Contains($" {n}: firm", StringComparison.Ordinal)).Select(n => new Fact(string.Empty, "cast", n, "in it"));

    private static IEnumerable<Fact> Wall(string[] lines, IReadOnlyList<string> cast)
    {
        var (move, group, details) = (string.Empty, string.Empty, new List<string>());
        var cells = new string[3];
        var facts = cast.Where(n => Flat(string.Join('\n', lines.SkipWhile(l => l != "CAST").TakeWhile(l => !l.StartsWith("FLOOR", StringComparison.Ordinal)))).Contains(n, StringComparison.Ordinal)).Select(n => new Fact(string.Empty, "cast", n, "in it")).ToList();
        var started = false;
        foreach (var line in lines)
        {
            started |= line == "MOVES";
            if (!started || line.StartsWith("POINTS", StringComparison.Ordinal))
            {
                started = started && !line.StartsWith("POINTS", StringComparison.Ordinal);
                continue;
            }

            if (Row().Match(line) is { Success: true } row)
            {
                facts.AddRange(Move(move, group, cells, details, cast));
                (move, details) = (row.Groups["move"].Value, []);
                facts.Add(new Fact(string.Empty, "count of a move", move, row.Groups["count"].Value));
                cells = [Cell(line, 18, 19), Cell(line, 39, 20), Cell(line, 61, 19)];
            }
            else if (line.Length > 9 && line[..8].Trim().Length == 0 && line[8] is '.' or '>' && line[9] == ' ')
            {
                details.Add(line[10..]);
            }
            else if (line.Length > 10 && line[..10].Trim().Length == 0 && details.Count > 0)
            {
                details[^1] += " " + line.Trim();
            }
            else if (line.Length > 18 && line[..18].Trim().Length == 0)
            {
                cells = [Join(cells[0], Cell(line, 18, 19)), Join(cells[1], Cell(line, 39, 20)), Join(cells[2], Cell(line, 61, 19))];
            }
            else if (line.Length > 0 && line[0] != ' ' && line != "MOVES")
            {
                facts.AddRange(Move(move, group, cells, details, cast));
                (move, group) = (string.Empty, line);
            }
            else if (group.Length > 0 && line.Length > 0 && move.Length == 0)
            {
                group += " " + line.Trim();
            }
        }

        return [.. facts, .. Move(move, group, cells, details, cast)];
    }

    private static IEnumerable<Fact> Move(string move, string group, string[] cells, List<string> details, IReadOnlyList<string> cast)
    {
        if (move.Length == 0)
        {
            yield break;
        }

        yield return new Fact(string.Empty, "who", move, group.EndsWith(" alone", StringComparison.Ordinal) ? "nobody" : Group().Match(group).Groups["who"].Value);
        yield return new Fact(string.Empty, "attack", move, cells[0]);
        yield return new Fact(string.Empty, "technique", move, cells[1].Trim('(', ')'));
        yield return new Fact(string.Empty, "reaction", move, cells[2]);
        foreach (var name in cast.Where(n => details.Exists(d => Array.Exists(Falling, f => d.StartsWith($"{n} {f}", StringComparison.Ordinal)))))
        {
            yield return new Fact(string.Empty, "fall", move + " " + name, "a fall");
        }
    }

    private static IEnumerable<Fact> Cues(string[] lines, IReadOnlyList<string> cast)
    {
        var phrases = 0;
        foreach (var line in lines)
        {
            if (Cue().Match(line) is not { Success: true } cue)
            {
                continue;
            }

            var kind = cue.Groups["kind"].Value;
            phrases += kind == "phrase" ? 1 : 0;
            if (kind == "phrase")
            {
                yield return new Fact(string.Empty, "count of a move", cue.Groups["move"].Value, cue.Groups["count"].Value);
            }

            if (kind == "fall" && cast.Where(n => n.StartsWith(cue.Groups["who"].Value.Trim(), StringComparison.Ordinal)).ToList() is [var who, ..])
            {
                yield return new Fact(string.Empty, "fall", cue.Groups["move"].Value + " " + who, "a fall");
                yield return new Fact(string.Empty, "down", cue.Groups["move"].Value + " " + who, cue.Groups["count"].Value);
            }

            var code = cue.Groups["code"].Value.Split(':').Select(p => decimal.Parse(p, CultureInfo.InvariantCulture)).ToList();
            yield return new Fact(string.Empty, kind is "knap" or "fall" or "out" ? "frame that comes" : "frame that begins", cue.Groups["count"].Value, (((((code[0] * 60) + code[1]) * 60 + code[2]) * 25) + code[3]).ToString(CultureInfo.InvariantCulture));
        }

        yield return new Fact(string.Empty, "number of phrases", "all", phrases.ToString(CultureInfo.InvariantCulture));
    }

    private static IEnumerable<Fact> Teaching(string[] lines, string flat, IReadOnlyList<string> cast)
    {
        var phrases = PhraseRow().Matches(flat);
        foreach (Match phrase in phrases)
        {
            yield return new Fact(string.Empty, "phrase", phrase.Groups["number"].Value, $"{phrase.Groups["from"].Value} to {phrase.Groups["to"].Value}");
        }

        yield return new Fact(string.Empty, "number of phrases", "all", phrases.Count.ToString(CultureInfo.InvariantCulture));
        var budget = Flat(string.Join('\n', lines.SkipWhile(l => !l.TrimStart().StartsWith("WHAT A DAY", StringComparison.OrdinalIgnoreCase)).TakeWhile(l => !l.Equals("DAYS", StringComparison.OrdinalIgnoreCase))));
        foreach (var name in cast)
        {
            var falls = Regex.Match(budget, Regex.Escape(name) + " (?<falls>[0-9]+) / ", RegexOptions.CultureInvariant);
            if (falls.Success)
            {
                yield return new Fact(string.Empty, "falls in a run", name, falls.Groups["falls"].Value);
                yield return new Fact(string.Empty, "cast", name, "in it");
            }
        }
    }

    private static string Cell(string line, int from, int width) => line.Length <= from ? string.Empty : line.Substring(from, Math.Min(width, line.Length - from)).Trim();

    private static string Join(string one, string other) => (one + " " + other).Trim();

    [GeneratedRegex(@"^  m(?<move>\d+) +(c(?<count>-?\d+&?)|(?<count>click \d+&?)) ", RegexOptions.CultureInvariant | RegexOptions.NonBacktracking)]
    private static partial Regex Row();

    [GeneratedRegex(@"^(?<who>.+) \(A\d\) from ", RegexOptions.CultureInvariant | RegexOptions.NonBacktracking)]
    private static partial Regex Group();

    [GeneratedRegex(@"\bm(?<move>\d+) c(?<count>\d+&?)", RegexOptions.CultureInvariant | RegexOptions.NonBacktracking)]
    private static partial Regex Tagged();

    [GeneratedRegex(@"^  (?<code>\d\d:\d\d:\d\d:\d\d)  (m(?<move>\d+))? *(c(?<count>-?\d+&?)|(?<count>click \d+&?)) +(?<kind>phrase|enters|sets off|voice|sound|touch|knap|fall|out) *(?<who>.{0,17}?)(  |$)", RegexOptions.CultureInvariant | RegexOptions.NonBacktracking)]
    private static partial Regex Cue();

    [GeneratedRegex(@"phrase (?<number>\d+) moves \d+ to \d+ counts (?<from>(click )?-?\d+&?) to (?<to>(click )?-?\d+&?)", RegexOptions.CultureInvariant | RegexOptions.NonBacktracking)]
    private static partial Regex PhraseRow();

    [GeneratedRegex(@"[Vv]ersion (?<id>[0-9a-f]{8})\b", RegexOptions.CultureInvariant | RegexOptions.NonBacktracking)]
    private static partial Regex Version();

    [GeneratedRegex(@"not to be performed like this: (?<what>the audit found (!! )?[0-9][^.]*)\.", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase | RegexOptions.NonBacktracking)]
    private static partial Regex Warning();
}
