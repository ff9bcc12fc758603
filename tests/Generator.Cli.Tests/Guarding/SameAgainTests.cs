using System.Diagnostics;

namespace Generator.Cli.Tests.Guarding;

/// <summary>The promise of one routine for a brief, a seed and a number of rounds, on the built program: alone, on one core, and beside others that take the cores away.</summary>
public sealed class SameAgainTests
{
    [Fact]
    public async Task One_core_or_all_and_a_busy_machine_give_the_same_bytes()
    {
        using var rig = new Rig();
        var brief = rig.File("b.brief.json", Guarded.NeverDone);
        var alone = await Draft(rig, brief, "alone", cores: null);
        var onOneCore = await Draft(rig, brief, "one-core", cores: "1");
        using var over = new CancellationTokenSource();
        var load = Enumerable.Range(0, 2 * Environment.ProcessorCount).Select(_ => Task.Factory.StartNew(() => SpinWait.SpinUntil(() => over.IsCancellationRequested), TaskCreationOptions.LongRunning)).ToArray();
        var underLoad = await Draft(rig, brief, "under-load", cores: null);
        await over.CancelAsync();
        await Task.WhenAll(load);
        Assert.Contains("\"moves\"", alone, StringComparison.Ordinal);
        Assert.Equal(alone, onOneCore);
        Assert.Equal(alone, underLoad);
        Assert.NotEqual(alone, await Draft(rig, brief, "other", cores: null, seed: "8"));
    }

    private static async Task<string> Draft(Rig rig, string brief, string name, string? cores, string seed = "7")
    {
        var path = Path.Combine(rig.Folder, name + ".routine.json");
        var start = new ProcessStartInfo("dotnet", [Path.Combine(AppContext.BaseDirectory, "generator.dll"), "draft", brief, "--rounds", "1", "--seed", seed, "--time", "3600", "--out", path])
        {
            UseShellExecute = false,
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        if (cores is not null)
        {
            start.Environment["DOTNET_PROCESSOR_COUNT"] = cores;
        }

        using var process = Process.Start(start)!;
        var printed = process.StandardOutput.ReadToEndAsync();
        var errors = await process.StandardError.ReadToEndAsync();
        await printed;
        await process.WaitForExitAsync();
        Assert.Contains("The same brief and seed give it again.", errors, StringComparison.Ordinal);
        return await File.ReadAllTextAsync(path);
    }
}
