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
    public const string None = "-";

    /// <summary>Stands in a cell that is open, where an empty one could be taken for one in which there is nothing.</summary>
    public const string Open = "?";

    private static readonly string[] Anew = ["cue", "stance", "linger"];

    private readonly Cast cast;
    private readonly Brief brief;
    private readonly CellReader cells;
    private readonly HashSet<string> workedOutAnew = new(StringComparer.Ordinal);
    private RoutineRow row = null!;
    private string field = string.Empty;

    public RowNotes(Brief brief, MeaningFinder finder)
    {
        (cast, this.brief) = (Cast.Of(brief), brief);
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
        var attack = says is null or None ? null : Cell("attack", w => cells.Attack(row.Line, w));
        return new SketchMove
        {
            Line = row.Line,
            ByAlly = ActorWords.Of(row, brief),
            Attacker = Attacker(),
            Attack = attack,
            FollowsUp = says is None,
            IsSuffered = lands,
            Technique = Text("technique") is null or None ? null : Cell("technique", w => cells.Technique(row.Line, w, attack, attack is not null)),
            Reaction = Text("reaction") is null or None ? null : Cell("reaction", w => cells.Reaction(row.Line, w)),
            Count = Text("count") is { } count ? cells.Count(row.Line, new NotesPart(count, 0)) : null,
            From = From(),
            Hurts = Hurts(),
            To = Text(MarkWords.To) is null ? null : MarkWords.Of(row, null, brief.Marks),
            Note = row.Text("note") ?? string.Empty,
            Cue = RowReader.Cue(row),
            Linger = RowReader.Linger(row),
            Stance = RowReader.Stance(row),
        };
    }

    /// <summary>"..." or "... 4" in place of a technique.</summary>
    private SketchMove? Gap()
    {
        if (Text("technique") is not { } text || (!text.StartsWith("...", StringComparison.Ordinal) && text[0] != '…'))
        {
            return null;
        }

        return cells.Gap(row.Line, text, new NotesPart(text.TrimStart('.', '…').Trim(), 0));
    }

    private string? Text(string name)
    {
        field = name;
        return row.Text(name) is { } text && !string.Equals(text, Open, StringComparison.Ordinal) ? text : null;
    }

    private SketchCell? Cell(string name, Func<NotesWords, SketchCell?> read)
    {
        var words = NotesWords.Of(new NotesPart(Text(name)!, 0));
        if (words.Reaction is not null || words.Count is not null)
        {
            row.Refuse(name, $"{FieldText.Quote(row.Text(name)!)} holds more than one cell should.", "Maybe put reactions and counts into columns of their own.");
        }

        return read(words);
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

    private Hurt? Hurts()
    {
        if (Text(HurtWords.Hurts) is null)
        {
            return null;
        }

        var hurt = HurtWords.Of(row, HalfCounts.TryParseCount(row.Text("count") ?? string.Empty, out var start) ? start : null);
        if (hurt is not null)
        {
            cells.TellHurt(row.Line, row.Text(HurtWords.Hurts)!, hurt);
        }

        return hurt;
    }

    private Bearing? From()
    {
        if (Text("from") is not { } text)
        {
            return null;
        }

        var bearing = cells.From(row.Line, new NotesPart(text, 0));
        if (bearing is not null && row.Text("attacker") is null or Open)
        {
            row.Refuse("from", "Nobody is named who comes from there.", "Maybe the attacker was left out.");
        }

        return bearing;
    }
}
