using System.Diagnostics;
using Newtonsoft.Json.Linq;

namespace Generator.Cli.Tests.Commands;

/// <summary>
/// The built program as a process of its own, interrupted as Ctrl-C interrupts it. Windows has no signal that one process could send
/// another in its stead, so that there is nothing to test there.
/// </summary>
public class CtrlCTests
{
    /// <summary>Four who are in from the start and may neither wait nor linger: somebody always has to wait, so that the search goes on.</summary>
    private const string NeverDone = """
        { "title": "All at once", "length": { "counts": 48 }, "pace": { "patienceCounts": 0, "lingerCounts": 0 },
          "attackers": [
            { "name": "Bruno", "bearing": "12", "distance": 2, "entrance": 1 }, { "name": "Wanda", "bearing": "3", "distance": 2, "entrance": 1 },
            { "name": "Piet", "bearing": "6", "distance": 2, "entrance": 1 }, { "name": "Lotte", "bearing": "9", "distance": 2, "entrance": 1 } ] }
        """;

    [Fact]
    public async Task With_a_routine_in_hand_the_best_so_far_is_kept_and_called_that()
    {
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        using var rig = new Rig();
        var kept = rig.File("kept.routine.json", "old");
        using var draft = Start("draft", rig.File("b.brief.json", NeverDone), "--time", "1200", "--json", "--out", kept);
        var output = draft.StandardOutput.ReadToEndAsync();
        var progress = await draft.StandardError.ReadLineAsync();
        Assert.Contains("points, no fewer than 0", progress, StringComparison.Ordinal);
        Interrupt(draft);
        var errors = $"{progress}\n{await draft.StandardError.ReadToEndAsync()}";
        await draft.WaitForExitAsync();

        Assert.True(draft.ExitCode == ExitCode.Good, $"exit {draft.ExitCode}: {errors}");
        var root = JObject.Parse(await output);
        Assert.Equal("best found", (string?)root["standing"]);
        var points = (int)root["points"]!;
        Assert.True(points > 0);
        Assert.Contains($"\nStopped; this is the best so far: best found, {points} points (no routine can have fewer than 0), after ", errors, StringComparison.Ordinal);
        var lastProgress = errors.Split('\n').Last(l => l.Contains("points, no fewer than", StringComparison.Ordinal));
        Assert.StartsWith($"{points} points,", lastProgress, StringComparison.Ordinal);
        Assert.True(JToken.DeepEquals(root["routine"], JObject.Parse(await File.ReadAllTextAsync(kept))), "printed and written routine differ");
        var audit = rig.Run("audit", kept, "--json");
        Assert.Equal((ExitCode.Good, points), (audit.Code, (int)JObject.Parse(audit.Out)["points"]!));
    }

    /// <summary>
    /// The interrupt comes while the brief is still being read from standard input: blanks fill the pipe until the program has begun to
    /// empty it, and the brief itself follows afterwards. Without its quick first pass the program could not have a routine yet.
    /// </summary>
    [Fact]
    public async Task Before_any_routine_nothing_is_printed_and_an_old_file_stays()
    {
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        using var rig = new Rig();
        var kept = rig.File("kept.routine.json", "old");
        using var draft = Start("draft", "-", "--cold", "--time", "1200", "--out", kept);
        var (output, errors) = (draft.StandardOutput.ReadToEndAsync(), draft.StandardError.ReadToEndAsync());
        await draft.StandardInput.WriteAsync(new string(' ', 1 << 21));
        Interrupt(draft);
        await draft.StandardInput.WriteAsync(NeverDone);
        draft.StandardInput.Close();
        await draft.WaitForExitAsync();

        Assert.Equal(
            (ExitCode.OutOfTime, string.Empty, "The search was stopped before there was a routine.\n  Maybe give it more with --time, try another --seed, or ask for less in the brief.\n"),
            (draft.ExitCode, await output, await errors));
        Assert.Equal("old", await File.ReadAllTextAsync(kept));
    }

    /// <summary>Whoever started these tests in the background may have had interrupts ignored; on Linux <c>env</c> sees that they are not.</summary>
    private static Process Start(params string[] args)
    {
        string[] program = ["dotnet", Path.Combine(AppContext.BaseDirectory, "generator.dll")];
        string[] line = OperatingSystem.IsLinux() ? ["env", "--default-signal=INT", .. program, .. args] : [.. program, .. args];
        return Process.Start(new ProcessStartInfo(line[0], line[1..])
        {
            UseShellExecute = false,
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        })!;
    }

    private static void Interrupt(Process process)
    {
        using var kill = Process.Start("kill", ["-INT", process.Id.ToString(System.Globalization.CultureInfo.InvariantCulture)]);
        kill.WaitForExit();
        Assert.Equal(0, kill.ExitCode);
    }
}
