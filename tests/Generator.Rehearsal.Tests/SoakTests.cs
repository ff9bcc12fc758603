using System.Globalization;
using System.Net;
using Generator.Domain;
using Generator.Domain.Edits;
using Generator.Library.Files;
using Generator.Library.Files.Notes;
using Generator.Library.Reading;
using Generator.Testing;
using Newtonsoft.Json.Linq;
using Xunit.Abstractions;

namespace Generator.Rehearsal.Tests;

/// <summary>
/// Whatever is done, in any order: the fight is what its edits make of it, undoing leads back to the start, the working copy holds it, and memory stays. <c>GENERATOR_EDITS=2000</c> asks for so many edits of each fight.
/// </summary>
public class SoakTests(ITestOutputHelper output)
{
    /// <summary>Bytes by which the heap may have grown in the end, kept edits included.</summary>
    private const long Growth = 24_000_000;

    /// <summary>How often the working copy is read back: of so few edits as usual every time, because reading takes far longer than writing.</summary>
    private const int Readings = 100;

    private static readonly int Edits = int.TryParse(Environment.GetEnvironmentVariable("GENERATOR_EDITS"), NumberStyles.None, CultureInfo.InvariantCulture, out var asked) ? asked : 70;

    private static readonly string[] Words = ["wide swing", "cross-right", "low parry", "parry-down-left", "elbow to the face!", "a kick", "any throw", "head back", "staggers-back", "hip throw?", "takes face hit", "walks-across", "finish", "-", "?", "", "... 3", "..."];

    public static TheoryData<string, string> Fights => new()
    {
        { "one hero", Stage.Yard },
        { "with an ally", Ally },
        { "on two marks", Marks },
    };

    internal const string Ally = """
        {
          "brief": { "title": "At the gate", "floor": { "width": 12, "depth": 12 }, "hero": { "name": "Zora" }, "ally": { "name": "Mira", "bearing": "6", "distance": 1.5 },
            "attackers": [ { "name": "Bruno", "bearing": "12", "distance": 4 }, { "name": "Wanda", "bearing": "6", "distance": 4 } ] },
          "moves": [
            { "count": 2, "by": "Zora", "attacker": "Bruno", "attack": "swing-right", "technique": "outside-block-left", "reaction": "limb-stopped" },
            { "count": "2&", "by": "Mira", "attacker": "Wanda", "attack": "swing-right", "technique": "outside-block-left", "reaction": "limb-stopped" },
            { "count": 3, "by": "Zora", "attacker": "Bruno", "technique": "cross-right", "reaction": "staggers-back", "hurts": "left-wrist until 9" } ]
        }
        """;

    internal const string Marks = """
        {
          "brief": { "title": "From door to window", "hero": { "name": "Zora", "skill": "stunt" }, "floor": { "width": 8, "depth": 7 },
            "marks": [ { "name": "door", "x": 2, "y": 3 }, { "name": "window", "x": 5, "y": 3 } ], "attackers": [ { "name": "Bruno" } ] },
          "attackers": [ { "name": "Bruno", "bearing": "12", "distance": 2 } ],
          "moves": [
            { "count": 2, "technique": "walks-across", "to": "window" },
            { "count": 9, "attacker": "Bruno", "from": "3", "attack": "cross-right", "technique": "driven-back-hit", "reaction": "presses-on", "to": "door" },
            { "count": 16, "attacker": "Bruno", "attack": "cross-right", "technique": "parry-down-left", "reaction": "limb-swept-in" } ]
        }
        """;

    [Theory]
    [MemberData(nameof(Fights))]
    public async Task Edits_at_random_are_what_was_done_are_kept_and_are_undone_to_the_start(string name, string fight)
    {
        await using var stage = await Stage.Open(text: fight);
        var (chance, start) = (new Chance(name.Length), stage.Document.Now.Sketch);
        var (done, kinds, before) = (0, new HashSet<string>(StringComparer.Ordinal), 0L);
        for (var tried = 0; done < Edits; tried++)
        {
            Assert.True(tried < 20 * Edits, "Nearly everything is refused.");
            var (call, message) = Drawn(chance, stage);
            message["revision"] = stage.Document.Now.Revision;
            var (status, said) = await stage.Call(call, message.ToString());
            Assert.True(status is HttpStatusCode.OK or HttpStatusCode.BadRequest, $"{call} {message}: {said}");
            if (status == HttpStatusCode.OK)
            {
                kinds.Add(call);
                done++;
                if (done % Math.Max(1, Edits / Readings) == 0)
                {
                    Kept(stage, $"{call} {message}");
                }
            }

            if (done == Edits / 10 && before == 0)
            {
                before = GC.GetTotalMemory(forceFullCollection: true);
            }
        }

        Assert.True(kinds.Count >= 8, string.Join(' ', kinds));
        Assert.Equal(SketchWriter.Text(stage.Document.Now.Sketch), SketchWriter.Text(stage.Document.Now.History.Done.Aggregate(start, Editing.Apply)));
        var growth = GC.GetTotalMemory(forceFullCollection: true) - before;
        output.WriteLine(FormattableString.Invariant($"{done} edits, {stage.Document.Now.Sketch.Moves.Count} moves in the end, heap {growth / 1e6:0.0} MB more than after a tenth of them"));
        Assert.InRange(growth, long.MinValue, Growth);
        while (stage.Document.Now.History.ToUndo is not null)
        {
            await stage.Good("undo", $$"""{"revision":{{stage.Document.Now.Revision}}}""");
        }

        Assert.Same(start, stage.Document.Now.Sketch);
    }

    /// <summary>The working copy reads back as what is shown.</summary>
    private static void Kept(Stage stage, string after)
    {
        var file = new SourceFile("live.json", File.ReadAllText(stage.Document.Store.Working));
        if (stage.Document.Now.Sketch.Moves.Count == 0)
        {
            // Who is in it and the floor are kept all the same.
            var bare = RoutineReader.Parse(file, Stage.Book);
            Assert.True(bare.IsGood, $"{after}: {string.Join('\n', bare.Problems.Select(p => p.ToText()))}");
            Assert.Equal(BriefWriter.Text(stage.Document.Now.Sketch.Brief), BriefWriter.Text(bare.Value.Brief));
            return;
        }

        var read = SketchReader.Parse(file, Stage.Book);
        Assert.True(read.IsGood, $"{after}: {string.Join('\n', read.Problems.Select(p => p.ToText()))}");
        Assert.Equal(SketchWriter.Text(stage.Document.Now.Sketch), SketchWriter.Text(read.Value.Sketch));

        // So would what is saved, once nothing is open.
        if (stage.Document.Now.Seen is { Open: null, Routine: { Moves.Count: > 0 } whole })
        {
            var again = RoutineReader.Parse(new SourceFile("saved.json", RoutineWriter.Text(whole)), Stage.Book);
            Assert.True(again.IsGood, $"{after}: {string.Join('\n', again.Problems.Select(p => p.ToText()))}");
        }
    }

    private static (string Call, JObject Message) Drawn(Chance chance, Stage stage)
    {
        var sketch = stage.Document.Now.Sketch;
        var moves = sketch.Moves.Count;
        var at = chance.Whole(0, Math.Max(0, moves - 1));
        var brief = JObject.Parse(SketchWriter.Text(sketch))["brief"]!;
        switch (chance.Whole(0, 15))
        {
            case 0:
                return ("insert", new JObject { ["before"] = chance.Whole(0, moves) });
            case 1:
                return ("delete", new JObject { ["move"] = at, ["last"] = Math.Min(moves - 1, at + chance.Whole(0, 1)) });
            case 2:
                return ("swap", new JObject { ["move"] = at });
            case 3:
                return ("shift", new JObject { ["move"] = at, ["by"] = chance.Whole(-9, 9) });
            case 4:
                return ("lock", new JObject { ["move"] = at, ["locked"] = chance.Percent(60) });
            case 5:
                return ("clear", new JObject { ["move"] = at });
            case 6:
                return ("place", new JObject { ["attacker"] = chance.Whole(0, sketch.Brief.Attackers.Count - 1), ["bearing"] = new Bearing(chance.Whole(0, 23)).ToClockText(), ["distance"] = chance.Whole(100, 900) });
            case 7:
                return ("note", new JObject { ["before"] = chance.Whole(0, moves), ["text"] = $"{chance.One(sketch.Brief.Attackers).Name}: wide swing > low parry, elbow to the face" });
            case 8:
                return ("redo", []);
            case 9:
                return ("undo", []);
            case 10:
                ((JArray)brief["attackers"]!).Add(new JObject { ["name"] = "Piet" });
                return ("recast", new JObject { ["what"] = "Piet comes in", ["brief"] = brief.ToString(), ["was"] = string.Join(',', Enumerable.Range(0, sketch.Brief.Attackers.Count)) + "," });
            case 11 when sketch.Brief.Attackers.Count > 1:
                ((JArray)brief["attackers"]!).RemoveAt(0);
                return ("recast", new JObject { ["what"] = "somebody leaves", ["brief"] = brief.ToString(), ["was"] = string.Join(',', Enumerable.Range(1, sketch.Brief.Attackers.Count - 1)) });
            case 12 or 13:
                Furnish(chance, brief);
                return ("recast", new JObject { ["what"] = "the floor", ["brief"] = brief.ToString(), ["was"] = string.Join(',', Enumerable.Range(0, sketch.Brief.Attackers.Count)) });
            default:
                var column = chance.Any<Column>();
                return ("type", new JObject { ["move"] = at, ["column"] = column.ToString().ToLowerInvariant(), ["text"] = Typed(chance, column, sketch.Brief) });
        }
    }

    /// <summary>A mat, a thing or a mark comes, or the last one goes; on a hard floor or a matted one.</summary>
    private static void Furnish(Chance chance, JToken brief)
    {
        var floor = brief["floor"]!;
        floor["surface"] = chance.One(["hard", "matted"]);
        var (of, list) = chance.One<(JToken, string)>([(floor, "mats"), (floor, "obstacles"), (brief, "marks")]);
        var all = (JArray?)of[list] ?? [];
        if (all.Count > 0 && chance.Percent(50))
        {
            all.RemoveAt(all.Count - 1);
        }
        else
        {
            var place = new JObject { ["name"] = $"{list} {all.Count}", ["x"] = chance.Whole(5, 60) / 10m, ["y"] = chance.Whole(5, 60) / 10m };
            if (list != "marks")
            {
                (place["width"], place["depth"]) = (0.5m, 0.5m);
            }

            all.Add(place);
        }

        of[list] = all;
        if (list == "marks" && all.Count > 0)
        {
            floor["mark"] = new JArray(all[0]["x"]!, all[0]["y"]!);
        }
    }

    private static string Typed(Chance chance, Column column, Brief brief) => column switch
    {
        Column.Count => chance.One(["", "3", "7&", "12-14", "99"]),
        Column.By => chance.One(["", "Zora", "Mira"]),
        Column.Attacker => chance.Percent(20) ? string.Empty : chance.One(brief.Attackers).Name,
        Column.From => chance.One(["", "2:30", "behind", "9"]),
        Column.Cue => chance.One(["", "voice", "touch"]),
        Column.Hurts => chance.One(["", "left-knee until 24", "right wrist until 5&"]),
        Column.To => chance.One(["", "window", "door"]),
        Column.Stance => chance.One(["", "left-lead", "right lead"]),
        Column.Linger => chance.One(["", "1", "2.5"]),
        Column.Note => chance.One(["", "slow", "two\nlines", "=1+1"]),
        _ => chance.One(Words),
    };
}
