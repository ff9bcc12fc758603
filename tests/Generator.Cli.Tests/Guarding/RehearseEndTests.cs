using System.Diagnostics;
using System.Globalization;
using Newtonsoft.Json.Linq;

namespace Generator.Cli.Tests.Guarding;

/// <summary>The live page ends with Ctrl-C and with its terminal, at a real pseudo terminal (util-linux's script), and takes nothing with it; its solver ends with it, however that ends.</summary>
public sealed class RehearseEndTests : IDisposable
{
    private const string Fight = """
        { "brief": { "title": "Behind the cinema", "hero": { "name": "Zora" }, "attackers": [ { "name": "Bruno" } ] },
          "moves": [ { "count": 1, "attacker": "Bruno", "attack": "swing-right", "technique": "parry-down-left", "reaction": "head-drops" } ] }
        """;

    /// <summary>At which a solver works for long.</summary>
    private static readonly string Open = $$"""{ "brief": { "hero": { "name": "Zora", "limits": [ "no-jump" ] }, "attackers": [ { "name": "Bruno" }, { "name": "Wanda" } ] }, "moves": [ {{string.Join(", ", Enumerable.Range(0, 200).Select(i => """{ "count": "?", "attacker": "Bruno", "attack": "?", "technique": "high-round-kick-right!", "reaction": "?" }"""))}} ] }""";

    private readonly string folder = Directory.CreateTempSubdirectory("generator-").FullName;
    private readonly HttpClient client = new();

    public void Dispose()
    {
        client.Dispose();
        Directory.Delete(folder, recursive: true);
    }

    [Fact]
    public async Task Ctrl_C_at_a_terminal_ends_it_with_0_and_every_edit_is_kept()
    {
        using var terminal = Start(Fight);
        var site = await Site(terminal);
        await Ask(site, "shift", new JObject { ["revision"] = 0, ["move"] = 0, ["by"] = 4 });
        await terminal.StandardInput.WriteAsync('\x03');
        await terminal.StandardInput.FlushAsync();
        await terminal.WaitForExitAsync();
        Assert.Equal(ExitCode.Good, terminal.ExitCode);
        Assert.Contains("\"count\": \"3\"", await File.ReadAllTextAsync(Path.Combine(folder, "yard.live.json")), StringComparison.Ordinal);
        Assert.Equal(["yard.live.json", "yard.routine.json"], Directory.EnumerateFiles(folder).Select(Path.GetFileName).Order(StringComparer.Ordinal));
    }

    [Fact]
    public async Task When_its_terminal_goes_it_goes_and_the_file_may_be_opened_again()
    {
        using var terminal = Start(Fight);
        var site = await Site(terminal);
        await Ask(site, "shift", new JObject { ["revision"] = 0, ["move"] = 0, ["by"] = 4 });
        var program = Children(terminal.Id).Single();
        Guarded.Send("KILL", terminal.Id);
        await Gone(program);
        Assert.Equal(["yard.live.json", "yard.routine.json"], Directory.EnumerateFiles(folder).Select(Path.GetFileName).Order(StringComparer.Ordinal));
        using var again = Start(null);
        Assert.Equal("3", (string?)(await Ask(await Site(again), "state", []))["rows"]![0]!["count"]);
        again.Kill(entireProcessTree: true);
        await again.WaitForExitAsync();
    }

    [Fact]
    public async Task A_solver_that_is_at_work_ends_when_the_page_is_killed()
    {
        using var terminal = Start(Open);
        var site = await Site(terminal);
        var program = Children(terminal.Id).Single();
        await Ask(site, "fill", []);
        Assert.Equal("fill what was open", (string?)(await Ask(site, "state", []))["offers"]!["running"]);
        var solvers = Children(program);
        Assert.NotEmpty(solvers);
        Guarded.Send("KILL", program);
        foreach (var solver in solvers)
        {
            await Gone(solver);
        }
    }

    [Fact]
    public async Task When_the_solver_is_killed_the_page_says_so_and_goes_on()
    {
        using var terminal = Start(Open);
        var site = await Site(terminal);
        var program = Children(terminal.Id).Single();
        await Ask(site, "fill", []);
        await Ask(site, "shift", new JObject { ["revision"] = 0, ["move"] = 0, ["by"] = 4 });
        var solvers = Children(program);
        foreach (var solver in solvers)
        {
            Guarded.Send("KILL", solver);
            await Gone(solver);
        }

        JToken? offers;
        while ((string?)(offers = (await Ask(site, "state", []))["offers"])?["running"] is not null)
        {
            await Task.Delay(20);
        }

        Assert.NotEmpty(((string?)offers!["trouble"])!);
        Assert.Equal("later from move 1 on", (string?)(await Ask(site, "state", []))["undo"]);
        await terminal.StandardInput.WriteAsync('\x03');
        await terminal.StandardInput.FlushAsync();
        await terminal.WaitForExitAsync();
        Assert.Equal(ExitCode.Good, terminal.ExitCode);
        Assert.Equal(["yard.live.json", "yard.routine.json"], Directory.EnumerateFiles(folder).Select(Path.GetFileName).Order(StringComparer.Ordinal));
    }

    private Process Start(string? fight)
    {
        var file = Path.Combine(folder, "yard.routine.json");
        if (fight is not null)
        {
            File.WriteAllText(file, fight);
        }

        var line = $"exec env --default-signal=INT,HUP dotnet '{Path.Combine(AppContext.BaseDirectory, "generator.dll")}' rehearse '{file}' --no-browser";
        return Process.Start(new ProcessStartInfo("script", ["-qfec", line, "/dev/null"]) { UseShellExecute = false, RedirectStandardInput = true, RedirectStandardOutput = true, RedirectStandardError = true })!;
    }

    private static async Task<Uri> Site(Process terminal)
    {
        while (await terminal.StandardOutput.ReadLineAsync() is { } line)
        {
            // The runtime sets the terminal up in the same line.
            if (line.IndexOf("http://127.0.0.1:", StringComparison.Ordinal) is >= 0 and var at)
            {
                return new Uri(line[at..].Trim());
            }
        }

        throw new InvalidOperationException("No address was printed.");
    }

    private async Task<JObject> Ask(Uri site, string what, JObject message)
    {
        using var request = new HttpRequestMessage(HttpMethod.Post, new Uri(site, "/" + what)) { Content = new StringContent(message.ToString()) };
        request.Headers.Add("Rehearsal-Token", site.Fragment[1..]);
        using var answer = await client.SendAsync(request);
        Assert.True(answer.IsSuccessStatusCode, await answer.Content.ReadAsStringAsync());
        return JObject.Parse(await answer.Content.ReadAsStringAsync());
    }

    private static async Task Gone(int process)
    {
        while (Guarded.IsAlive(process))
        {
            await Task.Delay(20);
        }
    }

    private static List<int> Children(int process) =>
        [.. Directory.EnumerateDirectories($"/proc/{process.ToString(CultureInfo.InvariantCulture)}/task").SelectMany(t => File.ReadAllText(Path.Combine(t, "children")).Split(' ', StringSplitOptions.RemoveEmptyEntries)).Select(c => int.Parse(c, CultureInfo.InvariantCulture))];
}
