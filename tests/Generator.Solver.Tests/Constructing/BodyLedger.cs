using Generator.Domain;
using Generator.Library;
using Generator.Library.Loading;
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
    private static readonly string[] Techniques = ["defences", "strikes", "kicks", "throws", "locks", "escapes", "finishes", "setbacks", "pauses", "pairs"];

    private static readonly Dictionary<string, JObject> Records = ((string[])["stances", "attacks", "reactions", .. Techniques])
        .SelectMany(f => JObject.Parse(File.ReadAllText(Path.Combine(LibraryLoader.BundledFolder, f + ".json"))).Properties().Where(p => p.Value is JArray)
            .SelectMany(p => p.Value.OfType<JObject>().Select(r => (Key: $"{(Techniques.Contains(f) ? "techniques" : f)}/{(string)r["id"]!}", File: f, Record: r))))
        .ToDictionary(p => p.Key, p => { p.Record["file"] = p.File; return p.Record; }, StringComparer.Ordinal);

    private static readonly JObject Holds = JObject.Parse(File.ReadAllText(Path.Combine(LibraryLoader.BundledFolder, "holds.json")));

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

            foreach (var lasting in Meanwhile(steps[m], technique))
            {
                yield return (m, lasting.Who, lasting.What);
            }

            foreach (var what in steps[m].Second < 0 ? [] : Loads(reaction?["load"]))
            {
                yield return (m, steps[m].Second, what);
            }
        }
    }

    /// <summary>
    /// What the hold or the grip of everybody whom the move does not concern asks of both meanwhile, and the move of its base. Who holds whom when it starts is the replay's word; a grip is
    /// that of the files for its line, or for the same line at the other side.
    /// </summary>
    private static IEnumerable<(int Who, string What)> Meanwhile(Step step, JObject technique)
    {
        for (var a = 0; a < step.Before.Attackers.Count; a++)
        {
            var state = step.Before.Attackers[a];
            string posture = Kebab(state.Posture.ToString()), line = state.Grip is { } g ? $"{Kebab(g.Kind.ToString())}-{Kebab(g.Side.ToString())}" : string.Empty;
            var held = Holds["held"]!.FirstOrDefault(h => (string)h["posture"]! == posture);
            var grip = posture == "gripping" ? Holds["grips"]!.FirstOrDefault(h => (string)h["line"]! == line) ?? Swapped(Holds)["grips"]!.FirstOrDefault(h => (string)h["line"]! == line) : null;
            if (a == step.Row.Attacker || a == step.Second || (held ?? grip) is not { } hold)
            {
                continue;
            }

            var hand = held is null ? [] : new[] { (step.Before.Left, Holds), (step.Before.Right, Swapped(Holds)) }.Where(h => h.Item1.Holds(a)).SelectMany(h => Loads(h.Item2["hand"]));
            foreach (var what in Loads(hold["load"]).Concat(Loads(technique["supportLoad"])))
            {
                yield return (a, what);
            }

            foreach (var what in Loads(hold["heroLoad"]).Concat(hand))
            {
                yield return (-1, what);
            }
        }
    }

    /// <summary>Moves during which somebody whom they do not concern holds or is held; a test of holds must have seen some.</summary>
    public static int Holding(Routine routine) => Replay.Of(new Scene(routine.Brief, Drafts.Book), routine).Count(s => Meanwhile(s, []).Any());

    /// <summary>Whether the hero takes a stance in a gap in some move; a test of stances must have seen some.</summary>
    public static int Changes(Routine routine) => routine.Moves.Count(m => m.Stance is not null);

    private static string Word(Stance stance) => Kebab(stance.ToString());

    private static string Kebab(string name) => string.Concat(name.Select((c, i) => char.IsUpper(c) ? (i > 0 ? "-" : string.Empty) + char.ToLowerInvariant(c) : c.ToString()));

    /// <summary>The record for one side: written once, and mirrored word by word.</summary>
    private static JObject Written(string kind, string id, Side? side)
    {
        var record = Records[kind + "/" + id];
        var written = (string?)record["side"];
        return side is null || written is null || string.Equals(written, side.ToString(), StringComparison.OrdinalIgnoreCase)
            ? record
            : Swapped(record);
    }

    private static JObject Swapped(JObject record) =>
        JObject.Parse(record.ToString().Replace("left", "#", StringComparison.Ordinal).Replace("right", "left", StringComparison.Ordinal).Replace("#", "right", StringComparison.Ordinal));

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
