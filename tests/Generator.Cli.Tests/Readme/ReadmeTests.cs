using System.Diagnostics;
using System.Text.RegularExpressions;
using Generator.Cli.Tests.Papers;
using Generator.Solver.Questions;

namespace Generator.Cli.Tests.Readme;

/// <summary>
/// What the README and the guides show is run as it stands, in a folder with their files: the first commands that a reader types as a program of its own, the others in this process, which saves each a start
/// and code that is not compiled yet.
/// </summary>
public partial class ReadmeTests
{
    /// <summary>Commands that are started: one that searches, one that reads notes, one that only reads.</summary>
    private const int Started = 3;

    /// <summary>A draft that other tests have as well, of the same brief by the same rounds: it is searched once.</summary>
    private const string Inn = "draft --scenario inn --out inn.routine.json --rounds 4";

    [Fact]
    public async Task Every_command_of_the_readme_and_the_guides_runs_as_it_says()
    {
        using var rig = new Rig();
        var (ran, compared) = (0, 0);
        var last = string.Empty;
        var blocks = ReadmeBlock.Pages.SelectMany(page => ReadmeBlock.All(page).Select(block => (Block: block, Start: page == "README.md" ? "dotnet run --project src/Generator.Cli -- " : "generator "))).ToList();
        foreach (var (file, text) in blocks.Where(b => b.Block.Mark.StartsWith("file: ", StringComparison.Ordinal)).Select(b => (b.Block.Mark[6..], b.Block.Text)))
        {
            rig.File(file, text);
        }

        foreach (var (block, start) in blocks)
        {
            switch (block.Mark.Split(", "))
            {
                case [['f', 'i', 'l', 'e', ':', ..]] or [['e', 'x', 'a', 'm', 'p', 'l', 'e', ':', ..]]:
                    break;
                case ["output"]:
                    Assert.Equal(block.Text, last);
                    compared++;
                    break;
                case ["run", .. var exit]:
                    foreach (var line in block.Text.Split('\n', StringSplitOptions.RemoveEmptyEntries))
                    {
                        Assert.StartsWith(start, line, StringComparison.Ordinal);
                        last = await Run(rig.Folder, line[start.Length..], exit is [var code] ? code : "exit 0", ran < Started);
                        ran++;
                    }

                    break;
                default:
                    Assert.Fail($"There is a mark that nothing reads: {block.Mark}.");
                    break;
            }
        }

        Assert.True(ran >= 16 && compared >= 1, $"{ran} commands, {compared} outputs");
    }

    [Fact]
    public void The_readme_and_the_build_script_run_the_tests_in_the_same_way()
    {
        const string Command = "dotnet test Generator.sln";
        Assert.Contains("\n" + Command + "\n", File.ReadAllText(Path.Combine(ReadmeBlock.Top, "README.md")).ReplaceLineEndings("\n"), StringComparison.Ordinal);
        Assert.Contains("\n" + Command + " 2>&1 ", File.ReadAllText(Path.Combine(ReadmeBlock.Top, ".ci", "run")).ReplaceLineEndings("\n"), StringComparison.Ordinal);
    }

    /// <summary>
    /// Runs a command and returns what it printed. Where the line says nothing, a draft ends after some rounds, which a busy machine does as well as an idle
    /// one, and what else searches has as long as any machine needs: it ends by itself long before, but for a revision, which would look for a smaller one for many minutes and is
    /// stopped at its first answer.
    /// </summary>
    private static async Task<string> Run(string folder, string line, string exit, bool started)
    {
        string[] words = [.. Words(line), .. Ends(line)];
        var (code, output, errors) = started ? await Program(folder, words) : Here(folder, words);
        Assert.True(string.Equals(exit, $"exit {code}", StringComparison.Ordinal), $"{line}: exit {code} instead of {exit}\n{errors}{output}");
        Assert.NotEmpty(output);
        return output.ReplaceLineEndings("\n");
    }

    private static async Task<(int Code, string Output, string Errors)> Program(string folder, string[] words)
    {
        string[] program = [Path.Combine(AppContext.BaseDirectory, "generator.dll"), .. words];
        using var process = Process.Start(new ProcessStartInfo("dotnet", program) { WorkingDirectory = folder, UseShellExecute = false, RedirectStandardOutput = true, RedirectStandardError = true })!;
        var errors = process.StandardError.ReadToEndAsync();
        var output = await process.StandardOutput.ReadToEndAsync();
        await process.WaitForExitAsync();
        return (process.ExitCode, output, await errors);
    }

    /// <summary>In this process, which has a folder of its own: names of files are told with theirs.</summary>
    private static (int Code, string Output, string Errors) Here(string folder, string[] words)
    {
        using var stop = new CancellationTokenSource();
        using var rig = new Rig
        {
            Stop = stop.Token,
            Draft = (brief, book, options, progress, stopped) => string.Join(' ', words) == Inn ? Made.InnDraft : Drafting.Draft(brief, book, options, progress, stopped),
            Keep = words[0] == "revise" ? (_, _) => stop.Cancel() : (_, _) => { },
        };
        var answer = rig.Run([.. words.Select((w, i) => Named().IsMatch(w) || (i > 0 && words[i - 1] == "--out") ? Path.Combine(folder, w) : w)]);
        return (answer.Code, answer.Out.Replace(folder + Path.DirectorySeparatorChar, string.Empty, StringComparison.Ordinal), answer.Err);
    }

    /// <summary>What ends a search whose line does not say when.</summary>
    private static string[] Ends(string line) => line.Contains("--time", StringComparison.Ordinal) ? [] : line.Split(' ')[0] switch
    {
        "draft" => ["--rounds", line.Contains("--scenario", StringComparison.Ordinal) ? "4" : "2"],
        "repair" or "revise" or "complete" or "alternatives" => ["--time", "1200"],
        "explain" when line.StartsWith("explain yard.csv", StringComparison.Ordinal) => ["--time", "1200"],
        _ => [],
    };

    /// <summary>Words of a shell line, of which only double quotation marks are understood.</summary>
    private static IEnumerable<string> Words(string line) =>
        line.Split('"').SelectMany((part, i) => i % 2 == 1 ? [part] : part.Split(' ', StringSplitOptions.RemoveEmptyEntries));

    /// <summary>The name of a file that a command reads or writes.</summary>
    [GeneratedRegex(@"\.(json|csv|txt|svg|html)$", RegexOptions.CultureInvariant | RegexOptions.NonBacktracking)]
    private static partial Regex Named();
}
