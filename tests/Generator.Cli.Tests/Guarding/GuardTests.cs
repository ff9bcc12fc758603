using System.Text.RegularExpressions;
using Generator.Cli.Tests.Files;
using Newtonsoft.Json.Linq;

namespace Generator.Cli.Tests.Guarding;

/// <summary>Each kind of breakdown is forced on the built program. Elsewhere than on Linux there is no /proc to find the worker by.</summary>
public class GuardTests
{
    private const string Hung = "Generator stopped: the work had not ended 1 s after its time, and was ended.";

    private static readonly string[] Nothing = [];

    [Theory]
    [InlineData("ABRT", "abort")]
    [InlineData("SEGV", "a wrong access to memory")]
    [InlineData("KILL", "killed from outside")]
    public async Task A_search_that_is_lost_leaves_the_best_routine_so_far(string signal, string reason)
    {
        if (!OperatingSystem.IsLinux())
        {
            return;
        }

        using var rig = new Rig();
        var old = rig.File("mine.routine.json", "old");
        using var draft = Guarded.Start(Nothing, "draft", rig.File("b.brief.json", Guarded.NeverDone), "--time", "1200", "--out", old);
        await draft.Kept(rig.Folder);
        await Guarded.Kill(signal, await draft.Worker());
        var answer = await draft.End();

        Assert.Equal((ExitCode.BrokenDown, string.Empty), (answer.Code, answer.Out));
        Assert.Contains($"Generator stopped: the process that did the work broke down ({reason}).\n  The best routine so far, of ", answer.Err, StringComparison.Ordinal);
        Assert.Contains(".routine.json.\n  Maybe ", answer.Err, StringComparison.Ordinal);
        Assert.Equal("old", await File.ReadAllTextAsync(old));
        AssertGood(rig, answer.Err);
    }

    /// <summary>A parameter that the solver does not know makes it abort from its own code.</summary>
    [Fact]
    public async Task An_abort_of_the_solver_itself_is_told()
    {
        if (!OperatingSystem.IsLinux())
        {
            return;
        }

        using var rig = new Rig();
        using var draft = Guarded.Start(["GENERATOR_SOLVER_PARAMETERS=no_such_parameter:1"], "draft", rig.File("b.brief.json", Guarded.NeverDone), "--cold", "--time", "600");
        var answer = await draft.End();
        Assert.Equal((ExitCode.BrokenDown, string.Empty), (answer.Code, answer.Out));
        Assert.Contains("Generator stopped: the process that did the work broke down (abort).\n  No routine was kept.", answer.Err, StringComparison.Ordinal);
        Assert.Contains("\n  Maybe another --seed", answer.Err, StringComparison.Ordinal);
    }

    [Fact]
    public async Task More_memory_than_allowed_ends_the_work_and_not_the_machine()
    {
        if (!OperatingSystem.IsLinux())
        {
            return;
        }

        using var rig = new Rig();
        using var draft = Guarded.Start(["GENERATOR_MEMORY=64"], "draft", rig.File("b.brief.json", Guarded.NeverDone), "--time", "600");
        var answer = await draft.End();
        Assert.Equal((ExitCode.BrokenDown, string.Empty), (answer.Code, answer.Out));
        Assert.Contains("Generator stopped: the work needed more than 64 MB of memory.\n", answer.Err, StringComparison.Ordinal);
        Assert.EndsWith("\n  Maybe ask for less in the brief, or allow more: GENERATOR_MEMORY=128 in the environment.\n", answer.Err, StringComparison.Ordinal);
    }

    /// <summary>Here the runtime itself may not have more than the library alone needs; with much less it cannot begin, with a little more it would only tidy up without end.</summary>
    [Fact]
    public async Task Memory_that_the_runtime_cannot_get_is_told()
    {
        if (!OperatingSystem.IsLinux())
        {
            return;
        }

        using var rig = new Rig();
        using var draft = Guarded.Start(["DOTNET_GCHeapHardLimit=0xA00000"], "draft", rig.File("b.brief.json", Guarded.NeverDone), "--time", "600");
        var answer = await draft.End();
        Assert.Equal((ExitCode.BrokenDown, string.Empty), (answer.Code, answer.Out));
        Assert.Contains("Generator stopped: ", answer.Err, StringComparison.Ordinal);
        Assert.Contains("\n  Maybe ", answer.Err, StringComparison.Ordinal);
    }

    /// <summary>Told to stop, it does not: the time that it had itself makes no difference then.</summary>
    [Fact]
    public async Task A_search_that_does_not_end_is_ended_and_its_best_routine_kept()
    {
        if (!OperatingSystem.IsLinux())
        {
            return;
        }

        using var rig = new Rig();
        var old = rig.File("mine.routine.json", "old");
        using var draft = Guarded.Start(["GENERATOR_GRACE=1"], "draft", rig.File("b.brief.json", Guarded.NeverDone), "--time", "1200", "--out", old);
        await draft.Kept(rig.Folder);
        Guarded.Send("STOP", await draft.Worker());
        draft.Send("INT");
        var answer = await draft.End();
        Assert.Equal((ExitCode.BrokenDown, string.Empty), (answer.Code, answer.Out));
        Assert.Contains(Hung + "\n  The best routine so far, of ", answer.Err, StringComparison.Ordinal);
        AssertGood(rig, answer.Err);
    }

    /// <summary>Halted before its own time is over: on a machine too busy for that there is nothing to see, and it is tried again with more time.</summary>
    [Fact]
    public async Task A_search_that_goes_on_after_its_time_is_ended()
    {
        if (!OperatingSystem.IsLinux())
        {
            return;
        }

        using var rig = new Rig();
        for (var time = 3; time < 1000; time *= 2)
        {
            using var draft = Guarded.Start(["GENERATOR_GRACE=1"], "draft", rig.File("b.brief.json", Guarded.NeverDone), "--time", time.ToString(System.Globalization.CultureInfo.InvariantCulture));
            var worker = await draft.Worker();
            if (await draft.Says("points, no fewer than"))
            {
                Guarded.Send("STOP", worker);
                if (await draft.End() is { Code: ExitCode.BrokenDown } answer)
                {
                    Assert.Equal(string.Empty, answer.Out);
                    Assert.Contains(Hung, answer.Err, StringComparison.Ordinal);
                    return;
                }
            }
        }

        Assert.Fail("It was never halted in time.");
    }

    [Fact]
    public async Task Who_cannot_wait_for_an_orderly_end_presses_twice()
    {
        if (!OperatingSystem.IsLinux())
        {
            return;
        }

        using var rig = new Rig();
        using var draft = Guarded.Start(Nothing, "draft", rig.File("b.brief.json", Guarded.NeverDone), "--time", "1200", "--out", Path.Combine(rig.Folder, "mine.routine.json"));
        await draft.Kept(rig.Folder);
        Guarded.Send("STOP", await draft.Worker());
        var answer = draft.End();
        while (!answer.IsCompleted)
        {
            // Two that come at once may arrive as one.
            draft.Send("INT");
            await Task.WhenAny(answer, Task.Delay(200));
        }

        Assert.Equal((ExitCode.Stopped, string.Empty), ((await answer).Code, (await answer).Out));
        AssertGood(rig, (await answer).Err);
    }

    /// <summary>The signal comes in the moment in which there is a worker for the first time, long before that is ready to listen.</summary>
    [Fact]
    public async Task A_stop_while_the_worker_still_starts_is_not_lost()
    {
        if (!OperatingSystem.IsLinux())
        {
            return;
        }

        var answer = await SignalledAtBirth("INT");
        Assert.Equal((ExitCode.OutOfTime, string.Empty), (answer.Code, answer.Out));
        Assert.Contains("The search was stopped before there was a routine.\n", answer.Err, StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_end_while_the_worker_still_starts_ends_both()
    {
        if (!OperatingSystem.IsLinux())
        {
            return;
        }

        var answer = await SignalledAtBirth("TERM");
        Assert.Equal((ExitCode.Stopped, string.Empty), (answer.Code, answer.Out));
        Assert.Equal("Generator stopped: it was ended at once.\n  No routine was kept. Every file is whole, as it was or as it was to be.\n", answer.Err);
    }

    [Fact]
    public async Task Without_its_guard_a_worker_ends_too()
    {
        if (!OperatingSystem.IsLinux())
        {
            return;
        }

        using var rig = new Rig();
        using var draft = Guarded.Start(Nothing, "draft", rig.File("b.brief.json", Guarded.NeverDone), "--time", "1200", "--out", Path.Combine(rig.Folder, "mine.routine.json"));
        await draft.Kept(rig.Folder);
        var worker = await draft.Worker();
        draft.Send("KILL");
        await draft.End();
        var left = 3000;
        while (Guarded.IsAlive(worker) && left-- > 0)
        {
            await Task.Delay(20);
        }

        Assert.False(Guarded.IsAlive(worker), "the worker goes on by itself");
    }

    [Fact]
    public async Task An_orderly_end_leaves_nothing_but_what_was_asked_for()
    {
        if (!OperatingSystem.IsLinux())
        {
            return;
        }

        using var rig = new Rig();
        using var draft = Guarded.Start(Nothing, "draft", rig.File("b.brief.json", Guarded.NeverDone), "--time", "1200", "--out", Path.Combine(rig.Folder, "mine.routine.json"));
        await draft.Kept(rig.Folder);
        draft.Send("INT");
        Assert.Equal(ExitCode.Good, (await draft.End()).Code);
        Assert.Equal(["b.brief.json", "mine.routine.json"], Directory.EnumerateFiles(rig.Folder).Select(f => Path.GetFileName(f)).Order(StringComparer.Ordinal));
    }

    /// <summary>What a long draft answers to a signal that comes as soon as there is a worker; the worker must be gone then.</summary>
    private static async Task<Answer> SignalledAtBirth(string signal)
    {
        using var rig = new Rig();
        using var draft = Guarded.Start(Nothing, "draft", rig.File("b.brief.json", Guarded.NeverDone), "--time", "1200");
        var worker = draft.SendAtBirth(signal);
        var answer = await draft.End();
        Assert.False(Guarded.IsAlive(worker), "the worker goes on by itself");
        return answer;
    }

    /// <summary>What was kept is where it was told to be, whole, passes the audit, and has the points that were told.</summary>
    private static void AssertGood(Rig rig, string told)
    {
        var kept = Regex.Match(told, @"^  The best routine so far, of (?<points>\d+) points?, is in (?<file>.+)\.$", RegexOptions.Multiline | RegexOptions.ExplicitCapture, TimeSpan.FromMinutes(1));
        Assert.True(kept.Success, told);
        Assert.Equal(rig.Folder, Path.GetDirectoryName(kept.Groups["file"].Value));
        StancesWritten.In(File.ReadAllText(kept.Groups["file"].Value));
        var audit = rig.Run("audit", kept.Groups["file"].Value, "--json");
        Assert.Equal(ExitCode.Good, audit.Code);
        Assert.Equal(kept.Groups["points"].Value, JObject.Parse(audit.Out)["points"]!.ToString());
    }
}
