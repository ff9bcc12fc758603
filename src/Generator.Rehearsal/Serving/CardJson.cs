using Generator.Domain.Edits;
using Generator.Domain.Sketches;
using Generator.Library;
using Generator.Library.Files.Notes;
using Generator.Rehearsal.Documents;
using Generator.Rehearsal.Offers;
using Newtonsoft.Json.Linq;

namespace Generator.Rehearsal.Serving;

/// <summary>What is offered, for the script of the page.</summary>
internal static class CardJson
{
    /// <summary>How the offers stand; null where there is nothing to say.</summary>
    public static JObject? Of(Offering.Stand stand, Document document) => stand.IsEmpty ? null : new JObject
    {
        ["number"] = stand.Number,
        ["running"] = stand.Running?.Name,
        ["seconds"] = stand.Running?.Time.TotalSeconds,
        ["trouble"] = stand.Trouble,
        ["isPresent"] = stand.Revision == document.Now.Revision,
        ["causes"] = new JArray(stand.Causes.Select(c => new JObject { ["under"] = c.Under, ["mended"] = c.Mended })),
        ["cards"] = new JArray(stand.Cards.Select(c => Of(document.Book, document.Now.Sketch, c))),
    };

    /// <summary>Every move of both fights, side by side.</summary>
    public static JArray Rows(Book book, Sketch before, Card card) => new(card.Pairs.Select(p => new JObject
    {
        ["same"] = p.IsSame,
        ["shifted"] = IsShifted(before, card, p),
        ["was"] = Move(book, before, p.Was),
        ["now"] = Move(book, card.After, p.Now),
    }));

    private static JObject Of(Book book, Sketch before, Card card)
    {
        var shifted = card.Pairs.Count(p => IsShifted(before, card, p));
        return new JObject
        {
            ["name"] = card.Name,
            ["points"] = card.Seen.Verdict.Points,
            ["grave"] = card.Seen.Verdict.Grave.Count,
            ["remark"] = card.Remark,
            ["gave"] = new JArray(card.Gave),
            ["moves"] = card.After.Moves.Count,
            ["shifted"] = shifted,
            ["at"] = card.Pairs.FirstOrDefault(p => p.Now >= 0 && (!p.IsSame || IsShifted(before, card, p)))?.Now ?? 0,
            ["rows"] = new JArray(card.Pairs.Where(p => !p.IsSame).Select(p => new JObject { ["was"] = Move(book, before, p.Was), ["now"] = Move(book, card.After, p.Now) })),
        };
    }

    private static bool IsShifted(Sketch before, Card card, Pair pair) => pair.IsSame && pair.Was < before.Moves.Count && before.Moves[pair.Was].Count != card.After.Moves[pair.Now].Count;

    private static JObject? Move(Book book, Sketch sketch, int at)
    {
        if (at < 0 || at >= sketch.Moves.Count)
        {
            return null;
        }

        var move = sketch.Moves[at];
        var said = new[] { (Column.Attack, move.Attack), (Column.Technique, move.Technique) }.Where(c => c.Item2 is not null).Select(c => StateJson.Meant(book, c.Item1, c.Item2!.Ids));
        return new JObject
        {
            ["move"] = at,
            ["count"] = SketchWriter.Typed(sketch, move, Column.Count),
            ["attacker"] = SketchWriter.Typed(sketch, move, Column.Attacker),
            ["text"] = move.IsGap ? SketchWriter.Typed(sketch, move, Column.Technique) : string.Join(" > ", said) + (move.Reaction is { } r ? $" ({StateJson.Meant(book, Column.Reaction, r.Ids)})" : string.Empty),
        };
    }
}
