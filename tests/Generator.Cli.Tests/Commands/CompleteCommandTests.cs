using Newtonsoft.Json.Linq;

namespace Generator.Cli.Tests.Commands;

public class CompleteCommandTests
{
    private const string Notes = "# Yard\nBruno: swing > forearm block, cross\nBruno: jab > slips, reverse punch\n";

    /// <summary>For what ends by itself, on any machine.</summary>
    private static readonly TimeSpan Enough = TimeSpan.FromMinutes(20);

    [Fact]
    public void Notes_become_a_routine_that_can_be_audited()
    {
        using var rig = new Rig { Patience = Enough };
        var answer = rig.Run("complete", rig.File("yard.notes.txt", Notes), "--out", Path.Combine(rig.Folder, "yard.json"));
        Assert.Equal(ExitCode.Good, answer.Code);
        Assert.Contains("Completed: Yard\nAll 4 moves stand as written.\n", answer.Out, StringComparison.Ordinal);
        Assert.Contains("  line 2   \"forearm block\" as Outside block\n", answer.Out, StringComparison.Ordinal);
        Assert.Contains("  line 3   \"reverse punch\" as Cross", answer.Out, StringComparison.Ordinal);
        Assert.Contains("Everything that was said stands.", answer.Err, StringComparison.Ordinal);
        Assert.Equal(ExitCode.Good, rig.Run("audit", Path.Combine(rig.Folder, "yard.json")).Code);
    }

    [Fact]
    public void Notes_may_come_from_standard_input()
    {
        using var rig = new Rig { Input = Notes, Patience = Enough };
        Assert.Equal(ExitCode.Good, rig.Run("complete", "-").Code);
    }

    [Fact]
    public void What_had_to_give_is_told_with_the_rule_and_exit_code_1()
    {
        using var stop = new CancellationTokenSource();
        using var rig = new Rig { Stop = stop.Token, Keep = (_, _) => stop.Cancel() };
        var answer = rig.Run("complete", rig.File("a.notes.txt", "Bruno: jab > slips\nBruno: > submit\n"), "--time", "1200");
        Assert.Equal(ExitCode.Forbidden, answer.Code);
        Assert.Contains("HAD TO GIVE\n", answer.Out, StringComparison.Ordinal);
        Assert.Contains("  line 2   ", answer.Out, StringComparison.Ordinal);
        Assert.Contains("no proof", answer.Err, StringComparison.Ordinal);
    }

    [Fact]
    public void An_opening_place_off_the_floor_is_named_at_once()
    {
        using var rig = new Rig();
        foreach (var command in (string[])["complete", "audit", "paperwork"])
        {
            string[] given = [rig.File("a.notes.txt", "Bruno: 3, 3 m\nBruno: jab > slips\n"), "--brief", rig.File("a.brief.json", """{ "floor": { "width": 5, "depth": 6 }, "length": { "moves": 2 }, "attackers": [{ "name": "Bruno" }] }""")];
            var answer = command == "paperwork" ? rig.Run([command, .. given, "--out", Path.Combine(rig.Folder, "papers")]) : rig.Run([command, .. given]);
            Assert.Equal(ExitCode.Impossible, answer.Code);
            Assert.Contains("Bruno opens 3.00 m out at 3 o'clock, where the floor is clear for 2.20 m.", answer.Err, StringComparison.Ordinal);
            Assert.Contains("\n  Maybe another place", answer.Err, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Json_tells_what_was_said_what_stands_and_what_gave()
    {
        using var rig = new Rig { Patience = Enough };
        var root = JObject.Parse(rig.Run("complete", "--json", rig.File("a.notes.txt", Notes)).Out);
        Assert.Equal(["routine", "findings", "points", "said", "stands", "proven", "understood", "opened", "gave"], root.Properties().Select(p => p.Name));
        Assert.Equal((4, 4, true), ((int)root["said"]!, (int)root["stands"]!, (bool)root["proven"]!));
        Assert.Equal(["line", "move", "text", "as", "guess", "unread"], ((JObject)root["understood"]![0]!).Properties().Select(p => p.Name));
        Assert.Empty(root["gave"]!);
        Assert.Empty(root["opened"]!);
    }

    [Fact]
    public void A_grab_and_its_answer_written_as_one_are_told_apart()
    {
        using var rig = new Rig { Patience = Enough };
        var notes = rig.File("a.notes.txt", "# Yard\nBruno: jab > slips\nBruno: bear hug from the front > knee\n");
        var root = JObject.Parse(rig.Run("complete", "--json", notes).Out);
        var (opened, moves) = (Assert.Single(root["opened"]!), root["routine"]!["moves"]!);
        Assert.Equal((3, 2), ((int)opened["line"]!, (int)opened["move"]!));
        var row = (int)opened["row"]!;
        Assert.Equal((string?)opened["attack"], (string?)moves[row - 1]!["attack"]);
        Assert.StartsWith("knee", (string?)moves[row]!["technique"], StringComparison.Ordinal);
        var text = string.Join(' ', rig.Run("complete", notes).Out.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        Assert.Contains("; 1 attack and its answer, written as one, are two moves.", text, StringComparison.Ordinal);
    }

    /// <summary>Rows say how long they are; a draft has none.</summary>
    [Fact]
    public void The_brief_beside_rows_may_leave_out_the_length()
    {
        using var rig = new Rig { Patience = Enough };
        var (notes, brief) = (rig.File("yard.notes.txt", Notes), rig.File("b.brief.json", """{ "attackers": [{ "name": "Bruno", "height": 1.9 }] }"""));
        var made = Path.Combine(rig.Folder, "yard.csv");
        Assert.Equal(ExitCode.Good, rig.Run("complete", notes, "--brief", brief, "--out", made).Code);
        Assert.Equal(ExitCode.Good, rig.Run("audit", notes, "--brief", brief).Code);
        Assert.Equal(ExitCode.Good, rig.Run("audit", made, "--brief", brief).Code);
        Assert.Equal(ExitCode.Good, rig.Run("paperwork", made, "--brief", brief, "--no-pdf", "--out", Path.Combine(rig.Folder, "papers")).Code);
        Assert.Contains("length", rig.Run("draft", brief).Err, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_no_sketch_is_refused()
    {
        using var rig = new Rig();
        Assert.Equal(ExitCode.Input, rig.Run("complete").Code);
        var csv = rig.Run("complete", rig.File("r.csv", "place,who\n1,Bruno\n"));
        Assert.Equal(ExitCode.Input, csv.Code);
        Assert.Contains("The first line does not name the columns.", csv.Err, StringComparison.Ordinal);
        var unknown = rig.Run("complete", rig.File("b.notes.txt", "Bruno: xqzzy > duck\n"));
        Assert.Equal(ExitCode.Input, unknown.Code);
        Assert.Contains("line 1, column 8: The library knows nothing like \"xqzzy\".", unknown.Err, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("a.csv", "attacker,attack,technique,reaction,note\nBruno,swing,forearm block,,from the stairs\nBruno,-,cross,head back,\n,,...,,\n")]
    [InlineData("a.json", """{ "moves": [ { "attacker": "Bruno", "attack": "swing", "technique": "forearm block", "note": "from the stairs" }, { "attacker": "Bruno", "attack": "-", "technique": "cross", "reaction": "head back" }, { "technique": "..." } ] }""")]
    public void Rows_with_open_cells_are_filled_in_and_keep_their_notes(string name, string text)
    {
        using var rig = new Rig { Patience = Enough };
        var answer = rig.Run("complete", rig.File(name, text), "--out", Path.Combine(rig.Folder, "whole.json"));
        Assert.True(answer.Code == ExitCode.Good, answer.Err);
        Assert.Contains("\"forearm block\" as Outside block", answer.Out, StringComparison.Ordinal);
        var moves = JObject.Parse(File.ReadAllText(Path.Combine(rig.Folder, "whole.json")))["moves"]!;
        Assert.Equal(("from the stairs", "head-back"), ((string?)moves[0]!["note"], (string?)moves[1]!["reaction"]));
    }

    [Fact]
    public void The_audit_of_a_sketch_says_what_must_give_in_the_words_of_the_writer()
    {
        using var stop = new CancellationTokenSource();
        using var rig = new Rig
        {
            Patience = Enough,
            Stop = stop.Token,
            Keep = (routine, _) =>
            {
                // Both moves stand, with something between them.
                if (routine().Moves is [{ Technique: ['s', 'l', 'i', 'p', ..] }, _, .., { Technique: ['s', 'u', 'b', 'm', 'i', 't', ..] }])
                {
                    stop.Cancel();
                }
            },
        };
        var good = rig.Run("audit", rig.File("yard.notes.txt", Notes));
        Assert.Equal(ExitCode.Good, good.Code);
        Assert.Contains("All 4 moves can stand as written.", good.Out, StringComparison.Ordinal);
        var bad = rig.Run("audit", rig.File("a.csv", "attacker,attack,technique\nBruno,jab,slips\nBruno,-,submit\n"));
        Assert.Equal(ExitCode.Forbidden, bad.Code);
        Assert.Contains("MUST GIVE\n", bad.Out, StringComparison.Ordinal);
        Assert.Contains("  line 3   something is missing before this move\n           flow-hands: ", bad.Out, StringComparison.Ordinal);
        Assert.Contains("(fewest found)", bad.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Notes_may_be_given_wherever_a_routine_may()
    {
        using var rig = new Rig { Patience = Enough };
        var notes = rig.File("yard.notes.txt", Notes);
        var brief = rig.File("b.json", """{ "attackers": [ { "name": "Bruno", "height": 1.9 } ], "length": { "moves": 4, "tolerance": 1 } }""");
        IReadOnlyList<string[]> commands = [["repair", notes], ["revise", notes, "--brief", brief], ["explain", notes, "2"], ["paperwork", notes, "--out", Path.Combine(rig.Folder, "papers"), "--no-pdf"]];
        Assert.All(commands, c =>
        {
            var answer = rig.Run(c);
            Assert.True(answer.Code == ExitCode.Good, answer.Err);
            Assert.Contains("is filled in first: 4 of 4 moves stand as written.\nUNDERSTOOD\n", answer.Err, StringComparison.Ordinal);
        });
    }

    [Fact]
    public void A_stop_before_there_was_anything_is_exit_code_4()
    {
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        using var rig = new Rig { Stop = stop.Token };
        Assert.Equal(ExitCode.OutOfTime, rig.Run("complete", rig.File("a.notes.txt", Notes)).Code);
    }
}
