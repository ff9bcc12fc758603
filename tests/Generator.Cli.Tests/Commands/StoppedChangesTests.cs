using System.Globalization;
using System.Text.RegularExpressions;
using Generator.Cli.Tests.Guarding;
using Newtonsoft.Json.Linq;

namespace Generator.Cli.Tests.Commands;

/// <summary>
/// The built program is interrupted while it repairs, revises or looks for alternatives: the best so far comes out whole, and is called no
/// more than that. Signals are sent on Linux only.
/// </summary>
public class StoppedChangesTests
{
    /// <summary>Without the library that it was made with, so that no remark on that comes first.</summary>
    private static readonly string Ferry = Regex.Replace(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Data", "ferry.routine.json")), "\"library\": \"[^\"]*\",", string.Empty, RegexOptions.None, TimeSpan.FromMinutes(1));

    [Fact]
    public async Task An_interrupted_repair_is_the_best_so_far()
    {
        if (!OperatingSystem.IsLinux())
        {
            return;
        }

        using var rig = new Rig();
        var routine = rig.File("broken.routine.json", Broken());
        Assert.Equal(ExitCode.Forbidden, rig.Run("audit", routine).Code);
        var (answer, root) = await Interrupted(rig, "repair", routine);
        Assert.Contains("\nStopped; this is the best so far: The smallest change found in ", answer.Err, StringComparison.Ordinal);
        Assert.Contains(" Not everything smaller was tried", answer.Err, StringComparison.Ordinal);
        Assert.InRange((int)root["changed"]!, 1, 25);
        Assert.Contains(root["routine"]!["moves"]!, m => ((string?)m["technique"])!.StartsWith("hip-throw", StringComparison.Ordinal) && (string?)m["attacker"] == "Bruno");
    }

    [Fact]
    public async Task An_interrupted_revision_is_the_best_so_far()
    {
        if (!OperatingSystem.IsLinux())
        {
            return;
        }

        using var rig = new Rig();
        var brief = (JObject)JObject.Parse(Ferry)["brief"]!;
        brief["length"] = JObject.Parse("""{ "counts": 62, "tolerance": 2 }""");
        var (answer, root) = await Interrupted(rig, "revise", rig.File("taught.routine.json", Ferry), "--brief", rig.File("longer.brief.json", brief.ToString()));
        Assert.Contains("\nStopped; this is the best so far: Best found in ", answer.Err, StringComparison.Ordinal);
        Assert.Contains("; maybe less would do, with more --time.", answer.Err, StringComparison.Ordinal);
        Assert.Equal(4, root["teaching"]!.Count());
        Assert.True((int)root["changed"]! > 0);
    }

    /// <summary>No two of nine may have a move in common: that is never found, and the search goes on.</summary>
    [Fact]
    public async Task Interrupted_alternatives_are_those_that_there_are()
    {
        if (!OperatingSystem.IsLinux())
        {
            return;
        }

        using var rig = new Rig();
        var folder = Path.Combine(rig.Folder, "ways");
        using var program = Guarded.Start([], "alternatives", rig.File("r.routine.json", Ferry), "--number", "9", "--differ", "100", "--slack", "1000", "--time", "1200", "--json", "--out", folder);
        var first = await program.Told(" of 9, the best has ");
        program.Send("INT");
        var answer = await program.End();
        Assert.True(answer.Code == ExitCode.OutOfTime, $"exit {answer.Code}: {first}\n{answer.Err}");
        var ways = JObject.Parse(answer.Out)["alternatives"]!;
        Assert.InRange(ways.Count(), 1, 8);
        Assert.Contains(string.Create(CultureInfo.InvariantCulture, $"Stopped: {ways.Count()} of 9 alternatives after "), answer.Err, StringComparison.Ordinal);
        var files = Directory.GetFiles(folder);
        Assert.Equal(ways.Count(), files.Length);
        Assert.All(files, f => Assert.Equal(ExitCode.Good, rig.Run("audit", f).Code));
        Assert.All(ways, w => Assert.Contains(w["routine"]!["moves"]!, m => ((string?)m["technique"])!.StartsWith("hip-throw", StringComparison.Ordinal)));
    }

    /// <summary>As little time as may be given: an answer that passes the audit and is called no more than it is, or the word that nothing is known.</summary>
    [Theory]
    [InlineData("repair")]
    [InlineData("revise")]
    [InlineData("alternatives")]
    public void A_tenth_of_a_second_gives_an_honest_answer(string command)
    {
        using var rig = new Rig();
        var brief = (JObject)JObject.Parse(Ferry)["brief"]!;
        brief["length"] = JObject.Parse("""{ "counts": 62, "tolerance": 2 }""");
        var longer = rig.File("longer.brief.json", brief.ToString());
        string[] more = command switch
        {
            "revise" => [rig.File("taught.routine.json", Ferry), "--brief", longer],
            "repair" => [rig.File("broken.routine.json", Broken())],
            _ => [rig.File("taught.routine.json", Ferry), "--number", "9", "--differ", "100"],
        };
        var answer = rig.Run([command, .. more, "--time", "0.1", "--json"]);
        if (answer.Out.Length == 0)
        {
            Assert.Equal(ExitCode.OutOfTime, answer.Code);
            Assert.StartsWith("Time ran out before there was a", answer.Err, StringComparison.Ordinal);
            Assert.Contains("Whether there is one is not known: nothing was proven against it.", answer.Err, StringComparison.Ordinal);
            return;
        }

        Assert.Contains(command == "alternatives" ? "Time ran out: " : "best found", answer.Out + answer.Err, StringComparison.Ordinal);
        var found = command == "alternatives" ? JObject.Parse(answer.Out)["alternatives"]!.Select(a => a["routine"]!) : [JObject.Parse(answer.Out)["routine"]!];
        Assert.All(found, r => Assert.Equal(ExitCode.Good, rig.Run("audit", rig.File("found.routine.json", r.ToString())).Code));
    }

    /// <summary>Starts the program, interrupts it at its first word of progress, and returns what it said and what it printed.</summary>
    private static async Task<(Answer Answer, JObject Root)> Interrupted(Rig rig, params string[] line)
    {
        var kept = rig.File("kept.routine.json", "old");
        using var program = Guarded.Start([], [.. line, "--time", "1200", "--json", "--out", kept]);
        var first = await program.Told(" points, after ");
        program.Send("INT");
        var answer = await program.End();
        Assert.True(answer.Code == ExitCode.Good, $"exit {answer.Code}: {first}\n{answer.Err}");
        var root = JObject.Parse(answer.Out);
        Assert.Equal("best found", (string?)root["standing"]);
        Assert.True(JToken.DeepEquals(root["routine"], JObject.Parse(await File.ReadAllTextAsync(kept))), "printed and written routine differ");
        Assert.Equal(ExitCode.Good, rig.Run("audit", kept).Code);
        return (answer with { Err = $"{first}\n{answer.Err}" }, root);
    }

    /// <summary>
    /// The ferry routine with somebody finished who does not lie, and another pushed away whom nobody holds. Either would do elsewhere, so that
    /// it takes long to try everything smaller.
    /// </summary>
    private static string Broken()
    {
        var routine = JObject.Parse(Ferry);
        var moves = (JArray)routine["moves"]!;
        (moves[4]["technique"], moves[4]["reaction"]) = ("stomp-finish-left", "out-lying");
        (moves[11]["technique"], moves[11]["reaction"]) = ("release-push", "staggers-back");
        return routine.ToString();
    }
}
