using System.Net;
using Generator.Domain.Edits;
using Generator.Library.Files;
using Generator.Library.Files.Notes;
using Generator.Library.Reading;
using Generator.Rehearsal.Serving;
using Newtonsoft.Json.Linq;

namespace Generator.Rehearsal.Tests;

/// <summary>A fight is written in plain words, judged at once, undone, kept and saved; nobody's work is lost or overwritten.</summary>
public class DocumentTests
{
    [Fact]
    public async Task Words_are_taken_for_what_they_mean_and_judged_at_once()
    {
        await using var stage = await Stage.Open();
        var tried = await stage.Good("try", """{"move":1,"column":"technique","text":"hip throw"}""");
        Assert.Equal("Hip throw", (string?)tried["as"]!.ToString().Split(" left")[0].Split(" right")[0].Split(" or ")[0]);
        Assert.Equal(0, stage.Document.Now.Revision);
        var said = await stage.Good("type", """{"revision":0,"move":0,"column":"count","text":"9"}""");
        Assert.Contains(said["found"]!["findings"]!, f => (string?)f["severity"] is "unsafe" or "broken");
        Assert.Equal("count of move 1", (string?)said["undo"]);
        Assert.Equal(["1", "2", "4&"], (await stage.Good("undo", """{"revision":1}"""))["rows"]!.Select(r => (string?)r["count"]));
        var (status, fault) = await stage.Call("type", """{"revision":2,"move":0,"column":"technique","text":"qwrtz"}""");
        Assert.Equal(HttpStatusCode.BadRequest, status);
        Assert.StartsWith("Maybe ", (string?)fault["maybe"], StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_is_found_before_an_open_move_stays_found_when_it_is_filled()
    {
        await using var stage = await Stage.Open();
        var whole = await stage.Good("type", """{"revision":0,"move":1,"column":"count","text":"1"}""");
        var open = await stage.Good("type", """{"revision":1,"move":2,"column":"technique","text":""}""");
        Assert.Equal(3, (int?)open["found"]!["open"]);
        var before = open["found"]!["findings"]!.Select(f => f.ToString()).ToList();
        Assert.NotEmpty(before);
        Assert.Subset(whole["found"]!["findings"]!.Select(f => f.ToString()).ToHashSet(StringComparer.Ordinal), before.ToHashSet(StringComparer.Ordinal));
    }

    [Fact]
    public async Task Words_are_answered_letter_by_letter_in_every_cell()
    {
        await using var stage = await Stage.Open();
        foreach (var (column, words) in new[] { ("attack", "wide swing"), ("technique", "elbow to the face!"), ("reaction", "head back"), ("count", "12&-20"), ("attacker", "Wanda"), ("from", "behind"), ("technique", "... 4"), ("technique", "-"), ("attack", "?") })
        {
            for (var length = 0; length <= words.Length; length++)
            {
                var said = await stage.Good("try", $$"""{"move":{{length % 3}},"column":"{{column}}","text":"{{words[..length]}}"}""");
                Assert.True(length > 0 || said["as"]!.Type == JTokenType.Null, said.ToString());
            }
        }
    }

    [Fact]
    public async Task A_line_of_notes_becomes_moves_at_the_soonest_counts()
    {
        await using var stage = await Stage.Open();
        var said = await stage.Good("note", """{"revision":0,"before":3,"text":"Wanda: > palm heel to the chin"}""");
        Assert.Equal(4, said["rows"]!.Count());
        Assert.NotEqual(string.Empty, (string?)said["rows"]![3]!["count"]);
        Assert.Equal("Wanda", (string?)said["rows"]![3]!["attacker"]);
        Assert.Equal("put in move 4", (string?)said["undo"]);
        Assert.Equal(HttpStatusCode.BadRequest, (await stage.Call("note", """{"revision":1,"before":4,"text":"Wanda palm heel"}""")).Status);
    }

    [Fact]
    public async Task Of_two_tabs_the_one_that_saw_an_older_fight_is_told_so()
    {
        await using var stage = await Stage.Open();
        await stage.Good("swap", """{"revision":0,"move":0}""");
        var (status, _) = await stage.Call("delete", """{"revision":0,"move":0}""");
        Assert.Equal(HttpStatusCode.Conflict, status);
        Assert.Equal(3, stage.Document.Now.Sketch.Moves.Count);
    }

    [Fact]
    public async Task Every_edit_is_in_the_working_copy_and_gone_on_with_after_an_end_without_saving()
    {
        await using var first = await Stage.Open();
        var before = await File.ReadAllTextAsync(first.File);
        await first.Good("lock", """{"revision":0,"move":0,"locked":true}""");
        await first.Good("type", """{"revision":1,"move":1,"column":"reaction","text":""}""");
        Assert.Equal(before, await File.ReadAllTextAsync(first.File));
        await first.End();
        await using var again = await Stage.Again(first.Folder);
        var said = await again.Good("state");
        Assert.Equal(["attack", "technique", "reaction"], said["rows"]![0]!["locked"]!.Select(l => (string?)l));
        Assert.Equal(string.Empty, (string?)said["rows"]![1]!["reaction"]);
        Assert.False((bool)said["saved"]!);
        Assert.NotNull(again.Remark);
    }

    [Fact]
    public async Task A_saved_routine_is_what_is_shown_with_all_that_only_a_routine_says()
    {
        await using var stage = await Stage.Open();
        await stage.Good("type", """{"revision":0,"move":2,"column":"note","text":"  quick "}""");
        var said = await stage.Good("save");
        Assert.True((bool)said["saved"]!);
        Assert.False(File.Exists(stage.Document.Store.Working));
        var read = RoutineReader.Parse(new SourceFile("a.json", await File.ReadAllTextAsync(stage.File)), Stage.Book).Value!;
        Assert.Equal(["", "slow", "  quick "], read.Moves.Select(m => m.Note));
        Assert.Equal(4, read.Moves[1].Linger.Value);
        await stage.Good("lock", """{"revision":1,"move":0,"column":"technique","locked":true}""");
        await stage.Good("save");
        Assert.Equal("parry-down-left", SketchReader.Parse(new SourceFile("a.json", await File.ReadAllTextAsync(stage.File)), Stage.Book).Value!.Sketch.Moves[0].Technique!.Ids.Single());
    }

    [Fact]
    public async Task What_another_program_has_written_is_never_overwritten()
    {
        await using var stage = await Stage.Open();
        await stage.Good("swap", """{"revision":0,"move":0}""");
        await File.WriteAllTextAsync(stage.File, "mine");
        var (status, fault) = await stage.Call("save");
        Assert.Equal(HttpStatusCode.Conflict, status);
        Assert.Contains("yard.live.json", (string?)fault["problem"], StringComparison.Ordinal);
        Assert.Equal("mine", await File.ReadAllTextAsync(stage.File));
        Assert.True((bool)(await stage.Good("state"))["outside"]!);
    }

    [Fact]
    public async Task A_file_is_open_in_one_program_at_a_time()
    {
        await using var stage = await Stage.Open();
        var refused = Assert.Throws<Documents.RefusedEditException>(() => Documents.Opening.Of(stage.File, Stage.Book));
        Assert.StartsWith("Maybe ", refused.Maybe, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_filling_is_an_offer_until_it_is_taken_and_too_late_once_the_fight_has_changed()
    {
        var answer = new JObject { ["routine"] = JObject.Parse(Stage.Yard), ["gave"] = new JArray() }.ToString();
        var asked = new List<string>();
        await using var stage = await Stage.Open((sketch, _) =>
        {
            asked.Add(sketch);
            return Task.FromResult(new Filled(answer, string.Empty));
        });
        await stage.Good("lock", """{"revision":0,"move":0,"column":"technique","locked":true}""");
        await stage.Good("type", """{"revision":1,"move":1,"column":"reaction","text":""}""");
        var said = await Ended(stage);
        Assert.Contains("\"?\"", Assert.Single(asked), StringComparison.Ordinal);
        Assert.Equal([false, true, false], said["fill"]!["news"]!.Select(n => (bool)n["isNew"]!));
        Assert.Equal(2, stage.Document.Now.Revision);
        await stage.Good("swap", """{"revision":2,"move":0}""");
        Assert.Equal(HttpStatusCode.Conflict, (await stage.Call("take", """{"revision":3}""")).Status);
        await stage.Good("undo", """{"revision":3}""");
        await Ended(stage);
        said = await stage.Good("take", """{"revision":4}""");
        Assert.Equal("staggers back", (string?)said["rows"]![1]!["reaction"]);
        Assert.Equal(["technique"], said["rows"]![0]!["locked"]!.Select(l => (string?)l));
        Assert.Equal("fill what was open", (string?)said["undo"]);
    }

    [Fact]
    public async Task A_filling_can_be_stopped_and_its_breakdown_is_told()
    {
        await using var stage = await Stage.Open(async (_, stop) =>
        {
            await Task.Delay(Timeout.Infinite, stop);
            return new Filled(string.Empty, string.Empty);
        });
        Assert.True((bool)(await stage.Good("fill"))["fill"]!["running"]!);
        Assert.Equal(HttpStatusCode.BadRequest, (await stage.Call("fill")).Status);
        await stage.Good("swap", """{"revision":0,"move":0}""");
        await stage.Good("stop");
        Assert.NotNull((await Settled(stage))["fill"]!["trouble"]);
    }

    [Fact]
    public async Task Every_edit_of_the_page_can_be_made_and_the_floor_drawn()
    {
        await using var stage = await Stage.Open();
        await stage.Good("insert", """{"revision":0,"before":1}""");
        await stage.Good("shift", """{"revision":1,"move":0,"by":2}""");
        await stage.Good("delete", """{"revision":2,"move":1}""");
        var said = await stage.Good("place", """{"revision":3,"attacker":1,"bearing":"9:30","distance":410}""");
        Assert.Equal("9:30", (string?)said["attackers"]![1]!["bearing"]);
        Assert.Equal("where Wanda opens", (string?)said["undo"]);
        foreach (var move in new[] { -1, 0, 2, 99 })
        {
            Assert.Contains("</svg>", (string?)(await stage.Good("floor", $$"""{"move":{{move}}}"""))["svg"], StringComparison.Ordinal);
        }

        Assert.Equal(stage.Document.Now.Sketch.Moves, stage.Document.Now.History.Done.Aggregate(Documents.Opening.Of(Copied(stage), Stage.Book).Document.Now.Sketch, Editing.Apply).Moves, (a, b) => a.Count == b.Count && a.Attacker == b.Attacker && a.Line == b.Line);
    }

    private static string Copied(Stage stage)
    {
        var path = Path.Combine(stage.Folder, "copy.routine.json");
        File.WriteAllText(path, Stage.Yard);
        return path;
    }

    private static async Task<JObject> Ended(Stage stage)
    {
        await stage.Good("fill");
        return await Settled(stage);
    }

    private static async Task<JObject> Settled(Stage stage)
    {
        for (var tries = 0; tries < 400; tries++)
        {
            var said = await stage.Good("state");
            if (said["fill"] is JObject { } fill && fill["running"] is null)
            {
                return said;
            }

            await Task.Delay(25);
        }

        throw new InvalidOperationException("The filling never ended.");
    }
}
