using System.Globalization;
using Generator.Domain;
using Generator.Domain.Sketches;
using Generator.Library.Reading;
using Generator.Library.Words;

namespace Generator.Library.Files.Notes;

/// <summary>Turns rows of a spreadsheet or of JSON, any of whose cells may be empty, into moves of a sketch.</summary>
internal sealed class RowNotes
{
    /// <summary>Stands in a cell in which there is to be nothing; an empty cell is open.</summary>
    private const string None = "-";

    private static readonly string[] Anew = ["cue", "stance", "linger"];

    private readonly Cast cast;
    private readonly CellReader cells;
    private readonly MeaningFinder finder;
    private readonly HashSet<string> workedOutAnew = new(StringComparer.Ordinal);
    private RoutineRow row = null!;
    private string field = string.Empty;

    public RowNotes(Cast cast, MeaningFinder finder)
    {
        (this.cast, this.finder) = (cast, finder);
        cells = new CellReader(finder, (_, fault) => row.Refuse(field, fault.Message, fault.Maybe));
    }

    public IReadOnlyList<Understood> Understood => cells.Understood;

    public SketchMove Read(RoutineRow next)
    {
        row = next;
        if (Gap() is { } gap)
        {
            return gap;
        }

        cells.NextMove();
        foreach (var name in Anew.Where(f => row.Text(f) is not null && workedOutAnew.Add(f)))
        {
            cells.Tell(row.Line, name, "worked out anew, here and in every other row", ofMove: false);
        }

        var (says, lands) = (Text("attack"), string.Equals(row.Text("technique"), None, StringComparison.Ordinal));
        var attack = says is null or None ? null : Cell("attack", finder.Attack);
        Func<string, Meaning> technique = attack is null ? finder.Technique : t => finder.Technique(t, attack.Ids);
        return new SketchMove
        {
            Line = row.Line,
            Attacker = Attacker(),
            Attack = attack,
            FollowsUp = says is None,
            IsSuffered = lands,
            Technique = Text("technique") is null or None ? null : Cell("technique", technique),
            Reaction = Text("reaction") is null or None ? null : Cell("reaction", finder.Reaction),
            Count = Text("count") is { } count ? cells.Count(row.Line, new NotesPart(count, 0)) : null,
            From = From(),
            Note = row.Text("note") ?? string.Empty,
        };
    }

    /// <summary>"..." or "... 4" in place of a technique.</summary>
    private SketchMove? Gap()
    {
        if (Text("technique") is not { } text || (!text.StartsWith("...", StringComparison.Ordinal) && text[0] != '…'))
        {
            return null;
        }

        var (most, rest) = (Sketch.OpenMoves, text.TrimStart('.', '…').Trim());
        if (rest.Length > 0 && !(int.TryParse(rest, NumberStyles.None, CultureInfo.InvariantCulture, out most) && most is >= 1 and <= 100))
        {
            row.Refuse(field, $"{FieldText.Quote(rest)} is no number of moves that may stand here.", "Maybe write \"...\" for any number, or \"... 4\" for at most four.");
        }

        cells.Tell(row.Line, text, string.Create(CultureInfo.InvariantCulture, $"up to {most} moves may stand here"), ofMove: false);
        return new SketchMove { Line = row.Line, Open = Math.Max(1, most) };
    }

    private string? Text(string name)
    {
        field = name;
        return row.Text(name);
    }

    private SketchCell? Cell(string name, Func<string, Meaning> find)
    {
        var words = NotesWords.Of(new NotesPart(Text(name)!, 0));
        if (words.Reaction is not null || words.Count is not null)
        {
            row.Refuse(name, $"{FieldText.Quote(row.Text(name)!)} holds more than one cell should.", "Maybe put reactions and counts into columns of their own.");
        }

        return cells.Cell(row.Line, words, find);
    }

    private int? Attacker()
    {
        if (Text("attacker") is not { } name)
        {
            return null;
        }

        var found = cast.Find(name);
        if (found < 0)
        {
            row.Refuse("attacker", Cast.Unknown(name), cast.Advice(name));
        }

        return found < 0 ? null : found;
    }

    private Bearing? From()
    {
        if (Text("from") is not { } text)
        {
            return null;
        }

        if (!FromWords.TryParse(text, out var bearing))
        {
            row.Refuse("from", $"{FieldText.Quote(text)} says no place to come from.", $"Maybe one of these is meant: {FromWords.All}.");
        }
        else if (row.Text("attacker") is null)
        {
            row.Refuse("from", "Nobody is named who comes from there.", "Maybe the attacker was left out.");
        }

        return bearing;
    }
}
