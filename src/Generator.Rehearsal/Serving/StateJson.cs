using Generator.Domain;
using Generator.Domain.Edits;
using Generator.Domain.Sketches;
using Generator.Library;
using Generator.Library.Files;
using Generator.Library.Files.Notes;
using Generator.Library.Reading;
using Generator.Rehearsal.Documents;
using Newtonsoft.Json.Linq;

namespace Generator.Rehearsal.Serving;

/// <summary>What the page shows, for its script.</summary>
internal static class StateJson
{
    private static readonly Column[] Words = [Column.Attack, Column.Technique, Column.Reaction];

    public static JObject Of(Document document, string instance)
    {
        var now = document.Now;
        var sketch = now.Sketch;
        return new JObject
        {
            ["instance"] = instance,
            ["revision"] = now.Revision,
            ["title"] = sketch.Brief.Title,
            ["file"] = Path.GetFileName(document.Store.Target),
            ["saved"] = document.IsSaved,
            ["outside"] = document.Store.IsChangedOutside,
            ["undo"] = now.History.ToUndo,
            ["redo"] = now.History.ToRedo,
            ["fresh"] = document.Store.IsNew && sketch.Moves.Count == 0,
            ["versions"] = document.Store.Versions.Count,
            ["hero"] = sketch.Brief.Hero.Name,
            ["ally"] = sketch.Brief.Ally?.Part.Name,
            ["brief"] = BriefWriter.Object(sketch.Brief),
            ["attackers"] = new JArray(sketch.Brief.Attackers.Select((a, i) => new JObject
            {
                ["name"] = a.Name,
                ["bearing"] = sketch.Placements[i]?.Bearing.ToClockText(),
                ["distance"] = sketch.Placements[i]?.Distance.Metres,
                ["drawn"] = now.Seen.Routine.Placements[i].Bearing.ToClockText(),
                ["far"] = now.Seen.Routine.Placements[i].Distance.Metres,
            })),
            ["rows"] = new JArray(sketch.Moves.Select(m => Row(document.Book, sketch, m))),
            ["found"] = Found(now.Seen, sketch.Moves.Count),
        };
    }

    /// <summary>What the audit says, as far as it can be said.</summary>
    public static JObject Found(Seen seen, int moves) => new()
    {
        ["open"] = seen.Open is { } open ? open + 1 : null,
        ["points"] = seen.Verdict.Points,
        ["clean"] = seen.Verdict.IsClean,
        ["moves"] = moves,
        ["findings"] = new JArray(seen.Verdict.Findings.Select(f => new JObject
        {
            ["move"] = f.Move,
            ["severity"] = EnumWords.Of(f.Severity),
            ["rule"] = f.Rule,
            ["who"] = f.Who,
            ["count"] = f.Count.ToCountText(),
            ["message"] = f.Message,
            ["advice"] = f.Advice,
        })),
    };

    /// <summary>What ids mean, in words: a name, or a few of several.</summary>
    public static string Meant(Book book, Column column, IReadOnlyList<string> ids)
    {
        var names = ids.Select(id => column switch
        {
            Column.Attack => book.Attack(id).Name,
            Column.Technique => book.Technique(id).Name,
            _ => book.Reactions[book.ReactionIndex(id)].Name,
        }).Distinct(StringComparer.Ordinal).ToList();
        return names.Count <= 3 ? string.Join(" or ", names) : FormattableString.Invariant($"{string.Join(", ", names.Take(2))} or {names.Count - 2} more");
    }

    private static JObject Row(Book book, Sketch sketch, SketchMove move)
    {
        var row = new JObject { ["gap"] = move.IsGap };
        foreach (var column in Enum.GetValues<Column>())
        {
            row[Name(column)] = Shown(move, column, SketchWriter.Typed(sketch, move, column));
        }

        var cells = Words.Select(c => (Column: c, Cell: CellOf(move, c))).Where(c => c.Cell is not null).ToList();
        row["as"] = new JObject(cells.Select(c => new JProperty(Name(c.Column), Meant(book, c.Column, c.Cell!.Ids))));
        row["locked"] = new JArray(cells.Where(c => c.Cell!.Firmness == Firmness.Fixed).Select(c => Name(c.Column)));
        row["sayings"] = cells.Count;
        row["none"] = new JArray(Seen.Needless(book, move).Select(Name));
        return row;
    }

    /// <summary>Ids with blanks for hyphens, and without the padlock, which is drawn.</summary>
    private static string Shown(SketchMove move, Column column, string typed) => CellOf(move, column) is { } cell
        ? cell is { Ids: [var only], Foot: null } ? only.Replace('-', ' ') + (cell.Firmness == Firmness.Wish ? "?" : string.Empty) : typed.TrimEnd('!')
        : typed;

    private static SketchCell? CellOf(SketchMove move, Column column) => column switch
    {
        Column.Attack => move.Attack,
        Column.Technique => move.Technique,
        Column.Reaction => move.Reaction,
        _ => null,
    };

    private static string Name(Column column) => EnumWords.Of(column);
}
