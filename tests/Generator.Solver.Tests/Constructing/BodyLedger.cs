using Generator.Domain;
using Generator.Library;
using Generator.Rules;
using Generator.Rules.Replaying;
using Newtonsoft.Json.Linq;

namespace Generator.Solver.Tests.Constructing;

/// <summary>
/// What a routine asks of everybody's body, move by move, out of the library's files as they are written and without the program's own reading of
/// loads and limits: the stance before each move, the one that a grab pulls the hero into, the change to the stance that the move says, the technique, and where it ends.
/// </summary>
internal static class BodyLedger
{
    private static readonly string[] Techniques = ["defences", "strikes", "kicks", "throws", "locks", "escapes", "finishes", "setbacks", "pauses"];

    private static readonly Dictionary<string, JObject> Records = ((string[])["stances", "attacks", "reactions", .. Techniques])
        .SelectMany(f => JObject.Parse(File.ReadAllText(Path.Combine(LibraryLoader.BundledFolder, f + ".json"))).Properties().Where(p => p.Value is JArray)
            .SelectMany(p => p.Value.OfType<JObject>().Select(r => (Key: $"{(Techniques.Contains(f) ? "techniques" : f)}/{(string)r["id"]!}", File: f, Record: r))))
        .ToDictionary(p => p.Key, p => { p.Record["file"] = p.File; return p.Record; }, StringComparer.Ordinal);

    /// <summary>Who is asked what in which move: the hero is −1; <c>right-knee bend</c>.</summary>
    public static IEnumerable<(int Move, int Who, string What)> Of(Routine routine)
    {
        var steps = Replay.Of(new Scene(routine.Brief, Drafts.Book), routine);
        var stance = routine.Brief.Hero.Lead switch { Side.Left => "left-lead", Side.Right => "right-lead", _ => "square" };
        for (var m = 0; m < routine.Moves.Count; m++)
        {
            var move = routine.Moves[m];
            var technique = Written("techniques", Drafts.Book.Technique(move.Technique!) is var t ? t.BaseId : string.Empty, t.Side);
            var attack = move.Attack is { } id && Drafts.Book.Attack(id) is var a ? Written("attacks", a.BaseId, a.Side) : null;
            var asked = new List<string>();
            if ((string)technique["file"]! == "escapes" && (string?)attack?["grips"]?["stance"] is { } pulled && stance is "left-lead" or "right-lead" or "square" && pulled is not null)
            {
                stance = pulled;
            }

            if (move.Stance is { } said)
            {
                var to = Word(said);
                var change = Records["stances/" + stance]["changes"]!.FirstOrDefault(c => (string)c["to"]! == to);
                asked.AddRange(Loads(change?["load"]));
                stance = to;
            }

            Assert.Contains(stance, technique["stances"]!.Select(s => (string)s!));
            asked.AddRange(Loads(Records["stances/" + stance]["load"]));
            asked.AddRange(Loads(technique["load"]));
            stance = (string?)technique["endStance"] is { } end and not "same" ? end : stance;
            asked.AddRange(Loads(Records["stances/" + stance]["load"]));
            foreach (var what in asked.Distinct())
            {
                yield return (m, -1, what);
            }

            var reaction = move.Reaction is { } r ? Records["reactions/" + r] : null;
            foreach (var what in move.Attacker is null ? [] : Loads(attack?["load"]).Concat(Loads(reaction?["load"])).Concat(Loads(technique["partnerLoad"])))
            {
                yield return (m, move.Attacker!.Value, what);
            }

            foreach (var what in steps[m].Second < 0 ? [] : Loads(reaction?["load"]))
            {
                yield return (m, steps[m].Second, what);
            }
        }
    }

    /// <summary>Whether the hero takes a stance in a gap in some move; a test of stances must have seen some.</summary>
    public static int Changes(Routine routine) => routine.Moves.Count(m => m.Stance is not null);

    private static string Word(Stance stance) => string.Concat(stance.ToString().Select((c, i) => char.IsUpper(c) ? (i > 0 ? "-" : string.Empty) + char.ToLowerInvariant(c) : c.ToString()));

    /// <summary>The record for one side: written once, and mirrored word by word.</summary>
    private static JObject Written(string kind, string id, Side? side)
    {
        var record = Records[kind + "/" + id];
        var written = (string?)record["side"];
        return side is null || written is null || string.Equals(written, side.ToString(), StringComparison.OrdinalIgnoreCase)
            ? record
            : JObject.Parse(record.ToString().Replace("left", "#", StringComparison.Ordinal).Replace("right", "left", StringComparison.Ordinal).Replace("#", "right", StringComparison.Ordinal));
    }

    private static IEnumerable<string> Loads(JToken? load) =>
        load is not JObject acts ? [] : acts.Properties().SelectMany(act => act.Value.SelectMany(p => Joints((string)p!)).Select(joint => $"{joint} {act.Name}"));

    private static IEnumerable<string> Joints(string part)
    {
        string[] sides = part.StartsWith("left-", StringComparison.Ordinal) ? ["left-"] : part.StartsWith("right-", StringComparison.Ordinal) ? ["right-"] : ["left-", "right-"];
        var name = part[(part.IndexOf('-', StringComparison.Ordinal) + 1)..].TrimEnd('s');
        return name switch
        {
            "neck" or "back" => [name],
            "leg" => sides.SelectMany(s => (string[])[s + "hip", s + "knee", s + "ankle"]),
            "arm" => sides.SelectMany(s => (string[])[s + "shoulder", s + "elbow", s + "wrist"]),
            "feet" or "foot" => sides.Select(s => s + "ankle"),
            "hand" => sides.Select(s => s + "wrist"),
            _ => sides.Select(s => s + name),
        };
    }
}
