using System.Diagnostics;
using System.Text;
using Generator.Cli.Tests.Guarding;

namespace Generator.Cli.Tests.Readme;

/// <summary>What the README and the guides show is run as it stands, as a program of its own, in a folder with their files.</summary>
public class ReadmeTests
{
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
                        last = await Run(rig.Folder, line[start.Length..], exit is [var code] ? code : "exit 0");
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
    /// Runs the program and returns what it printed. Where the line says nothing, a draft ends after some rounds, which a busy machine does as well as an idle
    /// one, and what else searches has as long as any machine needs: it ends by itself long before, but for a revision, which would look for a smaller one for many minutes and is
    /// interrupted at its first answer; where no signal can be sent, it has a minute.
    /// </summary>
    private static async Task<string> Run(string folder, string line, string exit)
    {
        var interrupted = line.StartsWith("revise", StringComparison.Ordinal) && OperatingSystem.IsLinux();
        string[] program = ["dotnet", Path.Combine(AppContext.BaseDirectory, "generator.dll"), .. Words(line), .. Ends(line)];
        string[] command = interrupted ? ["env", "--default-signal=INT", .. program] : program;
        using var process = Process.Start(new ProcessStartInfo(command[0], command[1..]) { WorkingDirectory = folder, UseShellExecute = false, RedirectStandardOutput = true, RedirectStandardError = true })!;
        var errors = interrupted ? Interrupted(process) : process.StandardError.ReadToEndAsync();
        var output = await process.StandardOutput.ReadToEndAsync();
        await process.WaitForExitAsync();
        Assert.True(string.Equals(exit, $"exit {process.ExitCode}", StringComparison.Ordinal), $"{line}: exit {process.ExitCode} instead of {exit}\n{await errors}{output}");
        Assert.NotEmpty(output);
        return output.ReplaceLineEndings("\n");
    }

    /// <summary>What ends a search whose line does not say when.</summary>
    private static string[] Ends(string line) => line.Contains("--time", StringComparison.Ordinal) ? [] : line.Split(' ')[0] switch
    {
        "draft" => ["--rounds", "4"],
        "revise" when !OperatingSystem.IsLinux() => ["--time", "60"],
        "repair" or "revise" or "complete" or "alternatives" => ["--time", "1200"],
        "explain" when line.StartsWith("explain yard.csv", StringComparison.Ordinal) => ["--time", "1200"],
        _ => [],
    };

    /// <summary>Standard error of a search that is interrupted at its first word of progress.</summary>
    private static async Task<string> Interrupted(Process process)
    {
        var told = new StringBuilder();
        while (await process.StandardError.ReadLineAsync() is { } news)
        {
            told.Append(news).Append('\n');
            if (news.Contains(", after ", StringComparison.Ordinal))
            {
                Guarded.Send("INT", process.Id);
                break;
            }
        }

        return told.Append(await process.StandardError.ReadToEndAsync()).ToString();
    }

    /// <summary>Words of a shell line, of which only double quotation marks are understood.</summary>
    private static IEnumerable<string> Words(string line) =>
        line.Split('"').SelectMany((part, i) => i % 2 == 1 ? [part] : part.Split(' ', StringSplitOptions.RemoveEmptyEntries));
}
