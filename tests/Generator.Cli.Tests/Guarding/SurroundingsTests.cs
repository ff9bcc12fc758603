using System.Diagnostics;

namespace Generator.Cli.Tests.Guarding;

/// <summary>The built program where the system gives it less than it needs, on Linux: a clear line and a code of its own, never a trace.</summary>
public sealed class SurroundingsTests : IDisposable
{
    private readonly Rig rig = new();

    public void Dispose() => rig.Dispose();

    [Fact]
    public void Too_few_file_handles_are_told_at_once() =>
        Ends(ExitCode.Surroundings, "ulimit -n 40; $G audit r.csv", "Generator stopped: the system lets it hold 40 files open at once, and it needs 192.\n  Maybe raise the limit");

    [Theory]
    [InlineData("abc")]
    [InlineData("50")]
    [InlineData("-5")]
    public void A_limit_of_memory_that_is_none_is_refused(string text) =>
        Ends(ExitCode.Input, $"GENERATOR_MEMORY={text} $G draft", $"GENERATOR_MEMORY={text} in the environment is not a whole number of MB from 64 on.\n  Maybe ");

    /// <summary>Names of files and words of the environment may come from anybody; no terminal obeys what is told of them.</summary>
    [Theory]
    [InlineData("$G audit $'no\\e[31m\\u202Efile.json'", "no\\u001B[31m\\u202Efile.json: There is no such file.\n  Maybe ")]
    [InlineData("GENERATOR_MEMORY=$'\\e[31m9' $G audit r.csv", "GENERATOR_MEMORY=?[31m9 in the environment is not a whole number")]
    public void What_turns_or_colours_a_line_is_told_and_not_done(string line, string told) => Ends(ExitCode.Input, line, told);

    [Theory]
    [InlineData("audit r.csv --brief b.json")]
    [InlineData("draft --attackers 1 --counts 12 --rounds 1 --out d.json")]
    public void A_closed_standard_output_is_told(string line)
    {
        Ends(ExitCode.NoOutput, $"$G {line} >&-", "Generator stopped: standard output cannot be written.\n  Maybe ");
        Assert.Equal(line.StartsWith("draft", StringComparison.Ordinal), File.Exists(Path.Combine(rig.Folder, "d.json")));
    }

    /// <summary>Nobody can be told anything then: the work is done all the same, and the code says how it ended.</summary>
    [Theory]
    [InlineData(ExitCode.Good, "draft --attackers 1 --counts 12 --rounds 1", "2>&-")]
    [InlineData(ExitCode.Input, "draft missing.json", "2>&-")]
    [InlineData(ExitCode.Input, "nonsense", "2>/dev/full")]
    [InlineData(ExitCode.NoOutput, "library list", ">&- 2>&- <&-")]
    public void A_closed_or_full_standard_error_ends_nothing(int code, string line, string closed) => Ends(code, $"$G {line} {closed}", string.Empty);

    [Fact]
    public void A_folder_that_is_gone_is_told() =>
        Ends(ExitCode.Surroundings, "mkdir gone; cd gone; rmdir ../gone; $G draft --attackers 1 --counts 12 --rounds 1 --out d.json", "Generator stopped: the folder in which it was started is gone.\n  Maybe ");

    [Theory]
    [InlineData("audit -")]
    [InlineData("draft -")]
    [InlineData("explain -")]
    public void Input_without_an_end_is_refused(string line) =>
        Ends(ExitCode.Input, $"yes | $G {line}", "standard input: There is no end after 4 million letters.\n  Maybe ");

    [Theory]
    [InlineData("audit -")]
    [InlineData("draft -")]
    public void A_closed_standard_input_is_an_empty_one(string line) =>
        Ends(ExitCode.Input, $"timeout 60 $G {line} <&-", "standard input: The file is empty.\n  Maybe ");

    /// <summary>A pipe made here stands for every device: tried before the search, and there afterwards. So is standard output, even where it goes into a file.</summary>
    [Theory]
    [InlineData("draft --time 600 --out p")]
    [InlineData("audit r.csv --out p")]
    [InlineData("draft --time 600 --out link")]
    [InlineData("draft --time 600 --out /dev/stdout >printed")]
    [InlineData("audit r.csv --out /proc/self/fd/1 >printed")]
    [InlineData("audit r.csv --out linked >printed")]
    public void A_pipe_is_not_replaced_by_a_file(string line)
    {
        Ends(ExitCode.Input, $"mkfifo p; ln -s p link; ln -s /dev/fd/1 linked; $G {line}", "this is a device or a pipe, not a file.\n  Maybe ");
        Ends(0, "test -p p", string.Empty);
    }

    [Fact]
    public void An_out_that_cannot_be_written_is_told_before_the_search()
    {
        var before = Directory.GetFiles(rig.Folder).Length;
        Ends(ExitCode.Input, $"$G draft --time 600 --out {new string('n', 250)}.json", "the file cannot be written; an older one is as it was.\n  Maybe ");
        Assert.Equal(before + 2, Directory.GetFiles(rig.Folder).Length);
    }

    private void Ends(int code, string line, string told)
    {
        rig.File("r.csv", Samples.CleanCsv);
        rig.File("b.json", Samples.Brief);
        var start = new ProcessStartInfo("bash") { UseShellExecute = false, RedirectStandardOutput = true, RedirectStandardError = true, WorkingDirectory = rig.Folder };
        start.ArgumentList.Add("-c");
        start.ArgumentList.Add(line.Replace("$G", "dotnet " + Path.Combine(AppContext.BaseDirectory, "generator.dll"), StringComparison.Ordinal));
        using var process = Process.Start(start)!;
        var output = process.StandardOutput.ReadToEndAsync();
        var errors = process.StandardError.ReadToEnd();
        output.GetAwaiter().GetResult();
        process.WaitForExit();
        Assert.Contains(told, errors, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", errors, StringComparison.Ordinal);
        Assert.Equal(code, process.ExitCode);
    }
}
