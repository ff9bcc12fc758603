using System.Net;
using Generator.Library.Files;
using Generator.Library.Reading;
using Newtonsoft.Json.Linq;

namespace Generator.Rehearsal.Tests;

/// <summary>What few moves say, fights on several marks and with an ally, and files and versions beside the one that is open.</summary>
public class DocumentKindsTests
{
    [Fact]
    public async Task What_another_program_has_written_is_read_as_an_edit_or_kept_as_a_version_and_saved_over()
    {
        await using var stage = await Stage.Open();
        await stage.Good("swap", """{"revision":0,"move":0}""");
        await File.WriteAllTextAsync(stage.File, Stage.Yard.Replace("staggers-back", "folds", StringComparison.Ordinal));
        var said = await stage.Good("reread", """{"revision":1}""");
        Assert.Equal(("folds", "read the file anew"), ((string?)said["rows"]![1]!["reaction"], (string?)said["undo"]));
        Assert.Equal((true, false), ((bool)said["saved"]!, (bool)said["outside"]!));
        Assert.False(File.Exists(stage.Document.Store.Working));
        said = await stage.Good("undo", """{"revision":2}""");
        Assert.Equal("knee to head right", (string?)said["rows"]![0]!["technique"]);
        await File.WriteAllTextAsync(stage.File, "mine");
        Assert.Equal(HttpStatusCode.BadRequest, (await stage.Call("reread", """{"revision":3}""")).Status);
        said = await stage.Good("save", """{"over":true}""");
        Assert.Equal((true, 1), ((bool)said["saved"]!, (int)said["versions"]!));
        Assert.Equal("mine", await File.ReadAllTextAsync(Path.Combine(stage.Folder, "yard.versions", "1.json")));
    }

    [Fact]
    public async Task Two_versions_are_compared_with_one_another_and_gone_over_to()
    {
        await using var stage = await Stage.Open();
        await stage.Good("delete", """{"revision":0,"move":2}""");
        await stage.Good("save");
        await stage.Good("delete", """{"revision":1,"move":1}""");
        await stage.Good("save");
        var compared = await stage.Good("compare", """{"first-version":0,"version":1}""");
        Assert.Equal((3, 2), ((int)compared["one"]!["moves"]!, (int)compared["other"]!["moves"]!));
        Assert.Equal([true, true, false], compared["rows"]!.Select(r => (bool)r["same"]!));
        var said = await stage.Good("restore", """{"revision":2,"version":0}""");
        Assert.Equal((3, "go over to an earlier version"), (said["rows"]!.Count(), (string?)said["undo"]));
        Assert.Equal(HttpStatusCode.BadRequest, (await stage.Call("restore", """{"revision":3,"version":2}""")).Status);
    }

    [Fact]
    public async Task What_few_moves_say_is_written_judged_and_saved_too()
    {
        await using var stage = await Stage.Open();
        var revision = 0;
        foreach (var (column, text, shown) in new[] { ("from", "2:30", "2:30"), ("cue", "Voice", "voice"), ("hurts", "her left knee until count 24", "left-knee until 24"), ("stance", "left lead", "left-lead"), ("linger", "1.5", "1.5"), ("note", "let it sit", "let it sit") })
        {
            var said = await stage.Good("type", new JObject { ["revision"] = revision++, ["move"] = 1, ["column"] = column, ["text"] = text }.ToString());
            Assert.Equal(shown, (string?)said["rows"]![1]![column]);
        }

        foreach (var (column, text) in new[] { ("cue", "smell"), ("hurts", "left-knee until 2"), ("hurts", "left-wing until 9"), ("stance", "on the head"), ("linger", "0.3"), ("to", "window"), ("by", "Mira") })
        {
            var (status, fault) = await stage.Call("type", new JObject { ["revision"] = revision, ["move"] = 1, ["column"] = column, ["text"] = text }.ToString());
            Assert.Equal((HttpStatusCode.BadRequest, true), (status, ((string?)fault["maybe"])!.StartsWith("Maybe ", StringComparison.Ordinal)));
        }

        // It goes along with its move, and what the blow hurts is judged as it is.
        var later = await stage.Good("shift", $$"""{"revision":{{revision}},"move":0,"by":2}""");
        Assert.Equal("left-knee until 25", (string?)later["rows"]![1]!["hurts"]);
        await stage.Good("save");
        var read = RoutineReader.Parse(new SourceFile("a.json", await File.ReadAllTextAsync(stage.File)), Stage.Book).Value!.Moves[1];
        Assert.Equal((Domain.Cue.Voice, "left-knee until 25", 3, "let it sit"), (read.Cue, read.Hurts!.Text, read.Linger.Value, read.Note));
    }

    [Fact]
    public async Task A_fight_on_two_marks_is_judged_with_where_its_travel_moves_go()
    {
        await using var stage = await Stage.Open(text: SoakTests.Marks);
        var audited = Rules.Judging.Audit.Of(stage.Document.Now.Scene, RoutineReader.Parse(new SourceFile("a.json", SoakTests.Marks), Stage.Book).Value!);
        var said = await stage.Good("state");
        Assert.Equal(audited.Findings.Select(f => f.Message), said["found"]!["findings"]!.Select(f => (string?)f["message"]));
        Assert.Equal(["window", "door", ""], said["rows"]!.Select(r => (string?)r["to"]));

        // What the hero does alone has no attacker and no reaction; nothing of it is open.
        Assert.Equal(["attacker attack reaction", "", ""], said["rows"]!.Select(r => string.Join(' ', r["none"]!)));
        said = await stage.Good("type", """{"revision":0,"move":0,"column":"to","text":""}""");
        Assert.Equal(1, (int)said["found"]!["open"]!);
        said = await stage.Good("type", """{"revision":1,"move":2,"column":"reaction","text":""}""");
        Assert.Empty(said["rows"]![2]!["none"]!);
        said = await stage.Good("type", """{"revision":2,"move":2,"column":"technique","text":"-"}""");
        Assert.Equal("reaction", string.Join(' ', said["rows"]![2]!["none"]!));
        said = await stage.Good("type", """{"revision":3,"move":0,"column":"to","text":"window"}""");
        Assert.Equal(JTokenType.Null, said["found"]!["open"]!.Type);
        said = await stage.Good("type", """{"revision":4,"move":0,"column":"attack","text":""}""");
        Assert.Equal(JTokenType.Null, said["found"]!["open"]!.Type);
    }

    [Fact]
    public async Task A_fight_with_an_ally_is_opened_audited_edited_and_saved_and_what_searches_or_draws_says_why_not()
    {
        await using var stage = await Stage.Open(text: SoakTests.Ally);
        var said = await stage.Good("state");
        Assert.Equal("Mira", (string?)said["ally"]);
        Assert.Equal(["Zora", "Mira", "Zora"], said["rows"]!.Select(r => (string?)r["by"]));
        var audited = Rules.Judging.Audit.Of(stage.Document.Now.Scene, RoutineReader.Parse(new SourceFile("a.json", SoakTests.Ally), Stage.Book).Value!);
        Assert.Equal(audited.Findings.Select(f => f.Message), said["found"]!["findings"]!.Select(f => (string?)f["message"]));

        // Somebody who is in a move of both at once is found while it is written.
        var tried = await stage.Good("try", """{"move":1,"column":"attacker","text":"Bruno"}""");
        Assert.Contains(tried["found"]!["findings"]!, f => (string?)f["rule"] == "one-contact");
        foreach (var (call, message) in new[] { ("fill", "{}"), ("mend-all", "{}"), ("ways", """{"move":0}"""), ("hurt", """{"performer":0,"limit":"injured-left-knee"}""") })
        {
            var (status, fault) = await stage.Call(call, message);
            Assert.Equal((HttpStatusCode.BadRequest, true), (status, ((string?)fault["problem"])!.StartsWith("Mira fights beside Zora, and the program searches nothing", StringComparison.Ordinal)));
        }

        foreach (var view in new[] { ("floor", """{"move":1}"""), ("time", "{}"), ("player", "{}") })
        {
            Assert.Contains("cannot show Mira beside Zora", (string?)(await stage.Good(view.Item1, view.Item2))["cannot"], StringComparison.Ordinal);
        }

        await stage.Good("type", """{"revision":0,"move":2,"column":"by","text":"Mira"}""");
        await stage.Good("save");
        Assert.Equal([false, true, true], RoutineReader.Parse(new SourceFile("a.json", await File.ReadAllTextAsync(stage.File)), Stage.Book).Value!.Moves.Select(m => m.ByAlly));
    }
}
