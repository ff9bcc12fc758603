using Generator.Domain;
using Generator.Domain.Edits;
using Generator.Domain.Sketches;
using Generator.Paperwork;
using Generator.Paperwork.Html;
using Generator.Rehearsal.Documents;
using Newtonsoft.Json.Linq;

namespace Generator.Rehearsal.Serving;

/// <summary>What the page can ask for, by name. Every answer is JSON; what cannot be done is a <see cref="RefusedEditException"/>.</summary>
internal sealed class Calls
{
    private readonly Document document;
    private readonly Filling filling;
    private readonly string instance;
    private readonly Dictionary<string, Func<Asked, JObject>> calls;

    public Calls(Document document, Filling filling, string instance)
    {
        (this.document, this.filling, this.instance) = (document, filling, instance);
        calls = new(StringComparer.Ordinal)
        {
            ["state"] = _ => State(),
            ["try"] = Try,
            ["type"] = a => After(() => document.Type(Revision(a), a.Whole("move"), a.Column("column"), a.Text("text"))),
            ["note"] = a => After(() => document.Note(Revision(a), a.Whole("before"), a.Text("text"))),
            ["insert"] = a => Do(a, new Insert(a.Whole("before"), [new SketchMove { Line = 1 }])),
            ["delete"] = a => Do(a, new Delete(a.Whole("move"), a.Whole("move"))),
            ["swap"] = a => Do(a, new Swap(a.Whole("move"))),
            ["shift"] = a => Do(a, new Shift(a.Whole("move"), a.Whole("by", -100, 100))),
            ["lock"] = a => Do(a, new Padlock(a.Whole("move"), a.Whole("move"), a.Says("column") ? a.Column("column") : null, a.Flag("locked"))),
            ["place"] = Place,
            ["undo"] = a => After(() => document.Undo(Revision(a))),
            ["redo"] = a => After(() => document.Redo(Revision(a))),
            ["save"] = _ => After(document.Save),
            ["floor"] = Floor,
            ["fill"] = _ => After(filling.Begin),
            ["stop"] = _ => After(filling.Stop),
            ["take"] = a => After(() => filling.Take(Revision(a))),
            ["leave"] = _ => After(filling.Leave),
        };
    }

    /// <summary>The call of that name; null where there is none.</summary>
    public Func<Asked, JObject>? Find(string name) => calls.GetValueOrDefault(name);

    private static int Revision(Asked asked) => asked.Whole("revision", 0, int.MaxValue);

    private JObject State()
    {
        var state = StateJson.Of(document, instance);
        state["fill"] = filling.Told();
        return state;
    }

    private JObject After(Action action)
    {
        action();
        return State();
    }

    private JObject Do(Asked asked, Edit edit) => After(() => document.Do(Revision(asked), edit));

    private JObject Try(Asked asked)
    {
        var column = asked.Column("column");
        var (cell, seen) = document.Try(asked.Whole("move"), column, asked.Text("text"));
        return new JObject
        {
            ["as"] = cell.Understood is not { } u ? null : u.IsPlain ? string.Join(", ", u.As) : StateJson.Meant(document.Book, column, u.As),
            ["unread"] = cell.Understood is { Unread: [_, ..] unread } ? string.Join(", ", unread) : null,
            ["problem"] = cell.Problem?.Message,
            ["maybe"] = cell.Problem?.Maybe,
            ["found"] = StateJson.Found(seen, document.Now.Sketch.Moves.Count),
        };
    }

    private JObject Place(Asked asked)
    {
        var (who, sketch) = (asked.Whole("attacker"), document.Now.Sketch);
        if (who >= sketch.Placements.Count)
        {
            throw new RefusedEditException("There is no such attacker.", "Maybe load the page again.");
        }

        var entrance = sketch.Placements[who]?.Entrance ?? sketch.Brief.Attackers[who].Entrance ?? HalfCounts.Zero;
        return Do(asked, new Place(who, sketch.Brief.Attackers[who].Name, asked.Place(entrance)));
    }

    private JObject Floor(Asked asked)
    {
        var now = document.Now;
        var plate = FloorPlate.Of(PaperSource.Of(now.Scene, now.Seen.Routine), asked.Whole("move", -1));
        return new JObject { ["svg"] = plate.Svg, ["x"] = plate.Mark.X, ["y"] = plate.Mark.Y, ["scale"] = plate.Scale, ["revision"] = now.Revision };
    }
}
