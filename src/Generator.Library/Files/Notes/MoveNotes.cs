using System.Globalization;
using Generator.Domain;
using Generator.Domain.Sketches;
using Generator.Library.Reading;
using Generator.Library.Words;

namespace Generator.Library.Files.Notes;

/// <summary>Turns the lines of notes that hold moves into moves of a sketch.</summary>
internal sealed class MoveNotes(string file, MeaningFinder finder, NotesCast cast, ProblemList problems)
{
    private static readonly string[] Numbers = ["two", "three", "four"];

    private readonly List<Understood> understood = [];
    private readonly HashSet<int> seen = [];
    private int number;

    public IReadOnlyList<Understood> Understood => understood;

    public IReadOnlyList<SketchMove> Read(NotesLine line) => line.Kind switch
    {
        NotesLineKind.Gap => [Gap(line)],
        NotesLineKind.Beat => [Beat(line)],
        _ => [.. Moves(line)],
    };

    private SketchMove Gap(NotesLine line)
    {
        var most = Sketch.OpenMoves;
        if (line.Rest.Length > 0 && !(int.TryParse(line.Rest, NumberStyles.None, CultureInfo.InvariantCulture, out most) && most is >= 1 and <= 100))
        {
            Refuse(line, line.Column, $"{FieldText.Quote(line.Rest)} is no number of moves that may stand here.", "Maybe write \"...\" for any number, or \"... 4\" for at most four.");
        }

        return new SketchMove { Line = line.Number, Open = Math.Max(1, most) };
    }

    private SketchMove Beat(NotesLine line)
    {
        number++;
        var words = NotesWords.Of(line.Rest, line.Column);
        return new SketchMove { Line = line.Number, Technique = Cell(line, words, finder.Beat), Count = Count(line, words) };
    }

    private IEnumerable<SketchMove> Moves(NotesLine line)
    {
        var attacker = cast.Names.Find(line.Name);
        if (attacker < 0)
        {
            Refuse(line, 1, Cast.Unknown(line.Name), cast.Names.Advice(line.Name));
        }

        var from = From(line, attacker);
        var arrow = line.Rest.IndexOf('>', StringComparison.Ordinal);
        var left = NotesWords.Of(arrow < 0 ? line.Rest : line.Rest[..arrow], line.Column);
        var attack = left.Text.Length > 0 ? Cell(line, left, finder.Attack, counts: false) : null;
        if (arrow < 0)
        {
            number++;
            yield return new SketchMove { Line = line.Number, Attacker = Known(attacker), Attack = attack, IsSuffered = true, From = from, Count = Count(line, left) };
            yield break;
        }

        var first = true;
        foreach (var words in NotesWords.List(line.Rest[(arrow + 1)..], line.Column + arrow + 1))
        {
            var (times, plain) = Times(words);
            for (var i = 0; i < times; i++)
            {
                number++;
                yield return new SketchMove
                {
                    Line = line.Number,
                    Attacker = Known(attacker),
                    Attack = first ? attack : null,
                    FollowsUp = !first || attack is null,
                    From = first && attack is not null ? from : null,
                    Technique = plain.Text.Length == 0 ? null : Cell(line, plain, first && attack is not null ? t => finder.Technique(t, attack.Ids) : finder.Technique),
                    Reaction = plain.Reaction is { } taken ? Cell(line, taken, finder.Reaction) : null,
                    Count = first && left.Count is not null ? Count(line, left) : Count(line, words),
                };
                first = false;
            }
        }
    }

    private static int? Known(int attacker) => attacker < 0 ? null : attacker;

    /// <summary>Where they come from; the first time it is where they open.</summary>
    private Bearing? From(NotesLine line, int attacker)
    {
        if (line.From is null)
        {
            seen.Add(attacker);
            return null;
        }

        if (!FromWords.TryParse(line.From, out var bearing))
        {
            Refuse(line, 1, $"{FieldText.Quote(line.From)} says no place to come from.", $"Maybe one of these is meant: {FromWords.All}.");
        }

        return seen.Add(attacker) ? null : bearing;
    }

    /// <summary>"Two to the face" is twice "to the face".</summary>
    private static (int Times, NotesWords Words) Times(NotesWords words)
    {
        var gap = words.Text.IndexOf(' ', StringComparison.Ordinal);
        var times = gap < 0 ? -1 : Array.IndexOf(Numbers, words.Text[..gap].ToLowerInvariant());
        return times < 0 || words.Text.Contains("hand", StringComparison.OrdinalIgnoreCase) || words.Text.Contains("arm", StringComparison.OrdinalIgnoreCase)
            ? (1, words) : (times + 2, words with { Text = words.Text[(gap + 1)..] });
    }

    private SketchCell? Cell(NotesLine line, NotesWords words, Func<string, Meaning> find, bool counts = true)
    {
        var meaning = find(words.Text);
        if (meaning.Ids.Count == 0)
        {
            Refuse(line, words.Column, $"The library knows nothing like {FieldText.Quote(words.Text)}.", meaning.Nearest.Count > 0 ? NearestWords.OneOf(meaning.Nearest) : "Maybe say it in other words.");
            return null;
        }

        understood.Add(new Understood(line.Number, number + (counts ? 0 : 1), words.Text, meaning.Ids, meaning.IsGuess));
        return new SketchCell(words.Text, meaning.Ids, words.Firmness, meaning.Foot);
    }

    private (HalfCounts First, HalfCounts Last)? Count(NotesLine line, NotesWords words)
    {
        if (words.Count is not { } said)
        {
            return null;
        }

        var ends = said.Split('-', StringSplitOptions.TrimEntries);
        if (ends.Length <= 2 && HalfCounts.TryParseCount(ends[0], out var first) && HalfCounts.TryParseCount(ends[^1], out var last) && first <= last)
        {
            return (first, last);
        }

        Refuse(line, words.Column, $"{FieldText.Quote("@" + said)} is no count.", "Maybe write @20, @20& or @20-24.");
        return null;
    }

    private void Refuse(NotesLine line, int column, string message, string maybe) =>
        problems.Add(new Problem(file, line.Number, "column " + column.ToString(CultureInfo.InvariantCulture), string.Empty, message, maybe));
}
