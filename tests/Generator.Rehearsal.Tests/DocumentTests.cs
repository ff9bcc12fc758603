using System.Net;
using Generator.Domain.Edits;
using Generator.Library.Files;
using Generator.Library.Files.Notes;
using Generator.Library.Reading;
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

    [Fact]
    public async Task A_stretch_or_all_that_somebody_is_in_is_locked_left_open_and_taken_out()
    {
        await using var stage = await Stage.Open();
        var said = await stage.Good("lock", """{"revision":0,"attacker":0,"locked":true}""");
        Assert.Equal("lock all that Bruno is in", (string?)said["undo"]);
        Assert.Equal([3, 2, 0], said["rows"]!.Select(r => r["locked"]!.Count()));
        said = await stage.Good("clear", """{"revision":1,"move":1,"last":2}""");
        Assert.Equal(["staggers back", string.Empty], said["rows"]!.Skip(1).Select(r => (string?)r["reaction"]));
        Assert.Equal("Wanda", (string?)said["rows"]![2]!["attacker"]);
        said = await stage.Good("delete", """{"revision":2,"move":1,"last":2}""");
        Assert.Equal("take out moves 2 to 3", (string?)said["undo"]);
        Assert.Equal(HttpStatusCode.BadRequest, (await stage.Call("lock", """{"revision":3,"attacker":2,"locked":true}""")).Status);
    }

    [Fact]
    public async Task Another_cast_keeps_the_moves_of_whoever_stays_and_a_bad_form_changes_nothing()
    {
        await using var stage = await Stage.Open();
        var brief = (JObject)(await stage.Good("state"))["brief"]!;
        ((JArray)brief["attackers"]!).RemoveAt(0);
        ((JArray)brief["attackers"]!).Add(new JObject { ["name"] = "Piet" });
        var said = await stage.Good("recast", new JObject { ["revision"] = 0, ["what"] = "Piet for Bruno", ["brief"] = brief.ToString(), ["was"] = "1," }.ToString());
        Assert.Equal(["", "", "Wanda"], said["rows"]!.Select(r => (string?)r["attacker"]));
        Assert.Equal(["2:30", null], said["attackers"]!.Select(a => (string?)a["bearing"]));
        Assert.Equal("Piet for Bruno", (string?)said["undo"]);
        brief["attackers"]![0]!["height"] = 17;
        var (status, fault) = await stage.Call("recast", new JObject { ["revision"] = 1, ["what"] = "x", ["brief"] = brief.ToString(), ["was"] = "0,1" }.ToString());
        Assert.Equal(HttpStatusCode.BadRequest, status);
        Assert.StartsWith("Maybe ", (string?)fault["maybe"], StringComparison.Ordinal);
        Assert.Equal(["Bruno", "Bruno", "Wanda"], (await stage.Good("undo", """{"revision":1}"""))["rows"]!.Select(r => (string?)r["attacker"]));
    }

    [Fact]
    public async Task Every_save_keeps_what_it_replaces_as_a_version_to_compare_with()
    {
        await using var stage = await Stage.Open();
        await stage.Good("swap", """{"revision":0,"move":0}""");
        Assert.Equal(1, (int)(await stage.Good("save"))["versions"]!);
        await stage.Good("delete", """{"revision":1,"move":2}""");
        Assert.Equal(2, (int)(await stage.Good("save"))["versions"]!);
        Assert.Equal(2, (int)(await stage.Good("save"))["versions"]!);
        Assert.Equal(Stage.Yard, await File.ReadAllTextAsync(Path.Combine(stage.Folder, "yard.versions", "1.json")));
        var compared = await stage.Good("compare", """{"version":0}""");
        Assert.Equal(3, (int)compared["other"]!["moves"]!);
        Assert.Equal(2, (int)compared["one"]!["moves"]!);
        Assert.Contains(compared["rows"]!, r => r["was"]!.Type == JTokenType.Null);
        Assert.Contains("</svg>", (string?)(await stage.Good("floor", """{"version":0,"move":2}"""))["svg"], StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.BadRequest, (await stage.Call("compare", """{"version":2}""")).Status);
        await File.WriteAllTextAsync(Path.Combine(stage.Folder, "another.routine.json"), Stage.Yard);
        Assert.Equal(["another.routine.json"], (await stage.Good("beside"))["files"]!.Select(f => (string?)f));
        Assert.Equal(3, (int)(await stage.Good("compare", """{"beside":0}"""))["other"]!["moves"]!);
        Assert.Equal(HttpStatusCode.BadRequest, (await stage.Call("compare", """{"beside":1}""")).Status);
        await stage.End();
        await using var again = await Stage.Again(stage.Folder);
        Assert.Equal(2, (int)(await again.Good("state"))["versions"]!);
    }

    [Fact]
    public async Task A_new_fight_begins_with_nothing_but_people_and_is_a_file_once_it_is_saved()
    {
        await using var stage = await Stage.New();
        var said = await stage.Good("state");
        Assert.True((bool)said["fresh"]!);
        Assert.Empty(said["rows"]!);
        Assert.Empty((await stage.Good("time"))["moves"]!);
        Assert.Contains("</svg>", (string?)(await stage.Good("floor", """{"move":-1,"whole":true}"""))["svg"], StringComparison.Ordinal);
        Assert.NotEmpty(((string?)(await stage.Good("player"))["html"])!);
        await stage.Good("note", """{"revision":0,"before":0,"text":"Ash: wide swing > duck, elbow to the face"}""");
        await stage.Good("save");
        Assert.True(File.Exists(stage.File));
        await using var next = await Stage.New(stage.Folder);
        Assert.EndsWith("fight-2.routine.json", next.File, StringComparison.Ordinal);
    }
}
