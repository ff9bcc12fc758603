using System.Globalization;

namespace Generator.Cli.Tests.Guarding;

/// <summary>Paperwork that is killed while a paper is half written, or while the pack is being printed, leaves neither half a file nor the folder it is printed from. On Linux.</summary>
public class LeftBehindTests
{
    private const string Half = "*.tmp";

    [Theory]
    [InlineData("TERM", ExitCode.Stopped)]
    [InlineData("HUP", ExitCode.Stopped)]
    [InlineData("KILL", ExitCode.BrokenDown)]
    public async Task Half_a_paper_is_cleared_up(string signal, int code)
    {
        if (!OperatingSystem.IsLinux())
        {
            return;
        }

        using var rig = new Rig();
        var papers = Path.Combine(rig.Folder, "papers");
        using var program = await HalfWritten(rig, papers);
        await Send(program, signal);
        Assert.Equal(code, (await program.End()).Code);
        Assert.Empty(Directory.EnumerateFiles(papers, Half));
    }

    /// <summary>The guard is killed as well: nobody is left to clear up, and the next run does.</summary>
    [Fact]
    public async Task Where_both_are_killed_the_next_run_clears_up()
    {
        if (!OperatingSystem.IsLinux())
        {
            return;
        }

        using var rig = new Rig();
        var papers = Path.Combine(rig.Folder, "papers");
        using (var program = await HalfWritten(rig, papers))
        {
            var worker = await program.Worker();
            program.Send("KILL");
            Guarded.Send("KILL", worker);
            await program.End();
        }

        Assert.Single(Directory.EnumerateFiles(papers, Half));
        Assert.Equal(ExitCode.Good, rig.Run("paperwork", rig.File("r.csv", Samples.CleanCsv), "--out", papers, "--no-pdf").Code);
        Assert.Empty(Directory.EnumerateFiles(papers, Half));
    }

    /// <summary>A browser that never ends stands in for one that is slow. Where the worker alone is killed it lives on, and the guard does not wait for it.</summary>
    [Theory]
    [InlineData("TERM", ExitCode.Stopped)]
    [InlineData("KILL", ExitCode.BrokenDown)]
    public async Task What_a_pack_is_printed_from_is_cleared_up(string signal, int code)
    {
        if (!OperatingSystem.IsLinux())
        {
            return;
        }

        using var rig = new Rig();
        var (scratch, started) = (Directory.CreateDirectory(Path.Combine(rig.Folder, "scratch")).FullName, Path.Combine(rig.Folder, "started"));
        File.SetUnixFileMode(rig.File("chromium", $"#!/bin/sh\necho $$ >{started}.half\nmv {started}.half {started}\nexec sleep 1000\n"), UnixFileMode.UserRead | UnixFileMode.UserExecute);
        string[] surroundings = ["TMPDIR=" + scratch, $"PATH={rig.Folder}:{Environment.GetEnvironmentVariable("PATH")}"];
        using var program = Guarded.Start(surroundings, "paperwork", rig.File("r.csv", Samples.CleanCsv), "--out", Path.Combine(rig.Folder, "papers"));
        while (!File.Exists(started))
        {
            await program.Worker();
            await Task.Delay(20);
        }

        Assert.NotEmpty(Directory.EnumerateDirectories(scratch, "generator-print-*"));
        await Send(program, signal);
        var end = program.End();
        await Task.WhenAny(end, Task.Delay(TimeSpan.FromMinutes(5)));
        await Guarded.Kill("KILL", int.Parse(await File.ReadAllTextAsync(started), CultureInfo.InvariantCulture));
        Assert.True(end.IsCompleted, "the guard waits for the browser");
        Assert.Equal(code, (await end).Code);
        Assert.Empty(Directory.EnumerateDirectories(scratch, "generator-print-*"));
    }

    /// <summary>Paperwork, halted while half a paper lies in the folder. A run may be over before it could be caught at that: then there is another.</summary>
    private static async Task<Guarded> HalfWritten(Rig rig, string papers)
    {
        var routine = rig.File("r.csv", Samples.CleanCsv);
        for (var run = 1; ; run++)
        {
            var program = Guarded.Start([], "paperwork", routine, "--out", papers, "--no-pdf");
            try
            {
                await Halt(program, papers);
                return program;
            }
            catch (InvalidOperationException) when (run < 20)
            {
                program.Dispose();
            }
        }
    }

    private static async Task Halt(Guarded program, string papers)
    {
        while (true)
        {
            var worker = await program.Worker();
            if (Directory.Exists(papers) && Directory.EnumerateFiles(papers, Half).Any())
            {
                Guarded.Send("STOP", worker);
                if (Directory.EnumerateFiles(papers, Half).Any())
                {
                    return;
                }

                Guarded.Send("CONT", worker);
            }
        }
    }

    /// <summary>To the worker when it is to be killed from outside, else to the guard.</summary>
    private static async Task Send(Guarded program, string signal)
    {
        if (signal == "KILL")
        {
            Guarded.Send(signal, await program.Worker());
        }
        else
        {
            program.Send(signal);
        }
    }
}
