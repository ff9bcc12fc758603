using Generator.Domain;
using Generator.Domain.Edits;
using Generator.Domain.Sketches;
using Generator.Rehearsal.Documents;
using Generator.Rehearsal.Offers;
using Generator.Rules;
using Newtonsoft.Json.Linq;

namespace Generator.Rehearsal.Serving;

/// <summary>What the page can ask for, by name. Every answer is JSON; what cannot be done is a <see cref="RefusedEditException"/>.</summary>
internal sealed class Calls
{
    /// <summary>Letters of the longest brief that a form sends, and figures on one card.</summary>
    private const int LongestBrief = 40_000, MostFigures = 3;

    /// <summary>Of the first of two fights that are compared.</summary>
    private const string First = "first-";

    private readonly Document document;
    private readonly Offering offering;
    private readonly Pictures pictures;
    private readonly string instance;
    private readonly Dictionary<string, Func<Asked, JObject>> calls;

    public Calls(Document document, Offering offering, string instance)
    {
        (this.document, this.offering, this.instance) = (document, offering, instance);
        pictures = new Pictures(document.Book);
        calls = new(StringComparer.Ordinal)
        {
            ["state"] = _ => State(),
            ["try"] = Try,
            ["type"] = a => After(() => document.Type(Revision(a), a.Whole("move"), a.Column("column"), a.Text("text"))),
            ["note"] = a => After(() => document.Note(Revision(a), a.Whole("before"), a.Text("text"))),
            ["insert"] = a => Do(a, new Insert(a.Whole("before"), [new SketchMove { Line = 1 }])),
            ["delete"] = a => Do(a, new Delete(a.Whole("move"), Last(a))),
            ["clear"] = a => Do(a, new Clear(a.Whole("move"), Last(a))),
            ["swap"] = a => Do(a, new Swap(a.Whole("move"))),
            ["shift"] = a => Do(a, new Shift(a.Whole("move"), a.Whole("by", -100, 100))),
            ["lock"] = Lock,
            ["place"] = Place,
            ["recast"] = a => After(() => document.Recast(Revision(a), a.Text("what"), a.Text("brief", LongestBrief), a.Numbers("was"))),
            ["undo"] = a => After(() => document.Undo(Revision(a))),
            ["redo"] = a => After(() => document.Redo(Revision(a))),
            ["save"] = a => After(() => document.Save(a.Says("over") && a.Flag("over"))),
            ["reread"] = a => After(() => document.Reread(Revision(a))),
            ["floor"] = a => On(a, (scene, seen) => pictures.Floor(scene, seen, a.Whole("move", -1), a.Says("whole") && a.Flag("whole"))),
            ["time"] = a => On(a, pictures.Time),
            ["player"] = a => On(a, pictures.Player),
            ["cards"] = _ => Cards(),
            ["compare"] = a => Compare(Subject(a, First), Subject(a) ?? throw new RefusedEditException("There is nothing to compare with.", "Maybe choose an offer or a saved version.")),
            ["restore"] = Restore,
            ["beside"] = _ => new JObject { ["files"] = new JArray(document.Store.Beside.Select(Path.GetFileName)), ["replaced"] = new JArray(document.Store.Versions.Select(f => new DateTimeOffset(File.GetLastWriteTimeUtc(f)).ToUnixTimeMilliseconds())) },
            ["fill"] = _ => After(() => offering.Ask(Question.Fill(document.Now))),
            ["ways"] = a => After(() => offering.Ask(Question.OtherWays(document.Now, a.Whole("move"), Last(a)))),
            ["mend-all"] = _ => After(() => offering.Ask(Question.Mend(document.Now))),
            ["mend"] = Mend,
            ["fold"] = _ => After(() => offering.Ask(Question.Causes(document.Now))),
            ["hurt"] = a => After(() => offering.Ask(Question.Hurt(document.Now, a.Whole("performer", -1), a.Text("limit")))),
            ["limits"] = _ => new JObject { ["limits"] = new JArray(Limit.All) },
            ["kinds"] = _ => Kinds(),
            ["stop"] = _ => After(offering.Stop),
            ["take"] = a => After(() => offering.Take(Revision(a), a.Whole("card"))),
            ["leave"] = _ => After(offering.Leave),
        };
    }

    /// <summary>The call of that name; null where there is none.</summary>
    public Func<Asked, JObject>? Find(string name) => calls.GetValueOrDefault(name);

    private static int Revision(Asked asked) => asked.Whole("revision", 0, int.MaxValue);

    private static int Last(Asked asked) => asked.Says("last") ? asked.Whole("last") : asked.Whole("move");

    /// <summary>What may stand or lie on a floor, each as its word and how it reads.</summary>
    private JObject Kinds()
    {
        return new JObject { ["things"] = Read(document.Book.Things.Kinds.Select(k => k.Id)), ["props"] = Read(document.Book.Props.Kinds.Select(k => k.Id)) };

        static JArray Read(IEnumerable<string> ids) => new(ids.Select(id => new JArray(id, id.Replace('-', ' '))));
    }

    private JObject State()
    {
        var state = StateJson.Of(document, instance);
        state["offers"] = CardJson.Of(offering.Now, document);
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

    private AttackerPart Attacker(Asked asked) => asked.Whole("attacker") is var who && who < document.Now.Sketch.Brief.Attackers.Count ? document.Now.Sketch.Brief.Attackers[who]
        : throw new RefusedEditException("There is no such attacker.", "Maybe load the page again.");

    private JObject Lock(Asked asked)
    {
        var locked = asked.Flag("locked");
        if (asked.Says("attacker"))
        {
            return Do(asked, new Padlock(0, document.Now.Sketch.Moves.Count - 1, null, locked) { Of = (asked.Whole("attacker"), Attacker(asked).Name) });
        }

        return Do(asked, new Padlock(asked.Whole("move"), Last(asked), asked.Says("column") ? asked.Column("column") : null, locked));
    }

    private JObject Place(Asked asked)
    {
        var (who, attacker) = (asked.Whole("attacker"), Attacker(asked));
        var entrance = document.Now.Sketch.Placements[who]?.Entrance ?? attacker.Entrance ?? HalfCounts.Zero;
        return Do(asked, new Place(who, attacker.Name, asked.Place(entrance)));
    }

    /// <summary>What is drawn or compared: a card, a version that was saved before, or null for the fight as it is.</summary>
    /// <param name="asked">The message.</param>
    /// <param name="side">Before the names of its fields: of which of two fights it is asked.</param>
    private Card? Subject(Asked asked, string side = "") => asked.Says(side + "card") ? offering.Find(asked.Whole(side + "card"))
        : asked.Says(side + "version") ? Other("an earlier version", document.Store.Versions, asked.Whole(side + "version"))
        : asked.Says(side + "beside") ? Other("another routine", document.Store.Beside, asked.Whole(side + "beside")) : null;

    private Card Other(string name, IReadOnlyList<string> files, int at) => Card.Of(name, document.Now, document.Other(files, at), document.Book);

    /// <summary>A picture of it. An offer may be gone by the time that its picture is asked for: that is nobody's fault, and the page asks again for what there is.</summary>
    private JObject On(Asked asked, Func<Scene, Seen, JObject> draw)
    {
        var now = document.Now;
        var card = asked.Says("card") ? offering.At(asked.Whole("card")) : null;
        if (asked.Says("card") && card is null)
        {
            return new JObject { ["gone"] = true };
        }

        var subject = card ?? Subject(asked);
        var drawn = subject is null ? draw(now.Scene, now.Seen) : draw(subject.Scene, subject.Seen);
        drawn["revision"] = now.Revision;
        return drawn;
    }

    /// <summary>What is new on each card, and what goes, as pictures: figures, and both fights over time.</summary>
    private JObject Cards()
    {
        var (stand, now) = (offering.Now, document.Now);
        return new JObject
        {
            ["number"] = stand.Number,
            ["was"] = pictures.Strip(now.Scene, now.Seen),
            ["stretch"] = Rules.Shapes.Intensity.Stretch,
            ["cards"] = new JArray(stand.Cards.Select(c =>
            {
                var others = c.Pairs.Where(p => !p.IsSame).ToList();

                // Of a single change both are shown.
                var comes = others.Where(p => p.Now >= 0).Select(p => p.Now).Take(MostFigures).ToList();
                var goes = others.Where(p => p.Was >= 0 && (others.Count == 1 || p.Now < 0)).Select(p => p.Was).Take(MostFigures - comes.Count);
                return new JObject
                {
                    ["goes"] = pictures.Figures(now.Scene, now.Seen, goes),
                    ["comes"] = pictures.Figures(c.Scene, c.Seen, comes),
                    ["now"] = pictures.Strip(c.Scene, c.Seen),
                    ["pairs"] = new JArray(c.Pairs.Select(p => new JArray(p.Was, p.Now, p.IsSame))),
                };
            })),
        };
    }

    /// <param name="one">Null for the fight as it is.</param>
    /// <param name="other">What it is compared with.</param>
    private JObject Compare(Card? one, Card other)
    {
        var now = document.Now;
        var sketch = one?.After ?? now.Sketch;
        return new JObject
        {
            ["rows"] = CardJson.Rows(document.Book, sketch, one is null ? other : other with { Pairs = SideBySide.Of(sketch, other.After) }),
            ["one"] = Facts(one?.Seen ?? now.Seen, sketch),
            ["other"] = Facts(other.Seen, other.After),
        };
    }

    /// <summary>A version or another routine in place of the fight, as an edit.</summary>
    private JObject Restore(Asked asked)
    {
        var back = Subject(asked) ?? throw new RefusedEditException("There is nothing to go back to.", "Maybe choose a saved version.");
        return Do(asked, new Take("go over to " + back.Name, back.After));
    }

    private static JObject Facts(Seen seen, Sketch sketch) => new()
    {
        ["moves"] = sketch.Moves.Count,
        ["points"] = seen.Verdict.Points,
        ["grave"] = seen.Verdict.Grave.Count,
        ["open"] = seen.Open is { } open ? open + 1 : null,
    };

    /// <summary>Mends of one finding, named by its place in the list that the page has.</summary>
    private JObject Mend(Asked asked)
    {
        var now = document.Now;
        if (Revision(asked) != now.Revision || asked.Whole("finding") is var at && at >= now.Seen.Verdict.Findings.Count)
        {
            throw new RefusedEditException("The fight has changed meanwhile.", "Maybe ask again.") { IsStale = true };
        }

        return After(() => offering.Show(now.Revision, Mends.Of(now, document.Book, now.Seen.Verdict.Findings[at]), "No single change round this move mends it without making something else worse. Maybe mend everything, or leave some moves round it open and fill them."));
    }
}
