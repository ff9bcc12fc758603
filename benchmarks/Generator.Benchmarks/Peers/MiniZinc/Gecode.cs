using System.Diagnostics;
using System.Globalization;

namespace Generator.Benchmarks.Peers.MiniZinc;

/// <summary>MiniZinc and Gecode as installed on this machine (Debian: <c>apt-get install minizinc</c>).</summary>
internal static class Gecode
{
    public const string HowToInstall = "MiniZinc with Gecode was not found, so the comparison with them is left out.\nMaybe install it: apt-get install minizinc";

    /// <summary>"MiniZinc 2.6.4, Gecode 6.2.0"; null when one of them is missing.</summary>
    public static string? Version()
    {
        var translator = FirstLine("minizinc", ["--version"], l => l.Contains("version", StringComparison.Ordinal));
        var solver = FirstLine("minizinc", ["--solvers"], l => l.Contains("(org.gecode.gecode", StringComparison.Ordinal));
        var runs = FirstLine("fzn-gecode", ["--help"], _ => true) ?? FirstLine("fzn-gecode", ["-help"], _ => true);
        return translator is null || solver is null || runs is null
            ? null
            : $"MiniZinc {translator.Split(' ', ',')[^1]}, {solver.Trim().Split('(')[0].Trim()}";
    }

    /// <summary>Flattens a model; milliseconds, by the clock and of the processor.</summary>
    /// <exception cref="InvalidOperationException">The model is wrong.</exception>
    public static (double Wall, double Processor) Flatten(string model, string flat)
    {
        var clock = Stopwatch.GetTimestamp();
        using var process = Start("minizinc", ["-c", "--solver", "gecode", model, "--fzn", flat, "--ozn", Path.ChangeExtension(flat, ".ozn")]);
        using var use = new ProcessWatch(process, double.PositiveInfinity);
        var errors = process.StandardError.ReadToEndAsync();
        _ = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return process.ExitCode == 0 ? (Stopwatch.GetElapsedTime(clock).TotalMilliseconds, use.Processor) : throw new InvalidOperationException(errors.GetAwaiter().GetResult());
    }

    /// <summary>Solves a flat model. Each answer is told with its values, milliseconds by the clock and of the processor.</summary>
    /// <param name="flat">The flat model.</param>
    /// <param name="limit">Of the search.</param>
    /// <param name="cores">Cores whose processor time is the limit, or 0 for the clock.</param>
    /// <param name="answer">Told of each answer.</param>
    /// <returns>The solver's last word (complete, unsatisfiable, or nothing), time by the clock and of the processor, and peak memory in MiB.</returns>
    public static (string Word, double Wall, double Processor, double Peak) Solve(string flat, TimeSpan limit, int cores, Action<IReadOnlyList<long>, double, double> answer)
    {
        var word = string.Empty;
        var clockLimit = cores == 0 ? limit : limit * 20;
        var clock = Stopwatch.GetTimestamp();
        using var process = Start("fzn-gecode", [.. SearchWay.Options, "-time", clockLimit.TotalMilliseconds.ToString("0", CultureInfo.InvariantCulture), flat]);
        _ = process.StandardError.ReadToEndAsync();
        using var use = new ProcessWatch(process, cores == 0 ? double.PositiveInfinity : limit.TotalMilliseconds * cores);
        while (process.StandardOutput.ReadLine() is { } line)
        {
            if (line.StartsWith("answer", StringComparison.Ordinal))
            {
                use.Look();
                answer(Values(line), Stopwatch.GetElapsedTime(clock).TotalMilliseconds, use.Processor);
            }
            else if (line.StartsWith("=====", StringComparison.Ordinal))
            {
                word = line.Trim('=').Trim();
                word = word.Length == 0 ? "complete" : word;
            }
        }

        process.WaitForExit();
        return (word, Stopwatch.GetElapsedTime(clock).TotalMilliseconds, use.Processor, use.Peak);
    }

    /// <summary>The numbers of "answer = array1d(1..3, [5, 0, 2]);".</summary>
    private static List<long> Values(string line)
    {
        var (from, to) = (line.IndexOf('[', StringComparison.Ordinal) + 1, line.LastIndexOf(']'));
        return [.. line[from..to].Split(',').Select(v => long.Parse(v, CultureInfo.InvariantCulture))];
    }

    private static string? FirstLine(string program, string[] words, Func<string, bool> wanted)
    {
        try
        {
            using var process = Start(program, words);
            var errors = process.StandardError.ReadToEndAsync();
            var text = process.StandardOutput.ReadToEnd() + errors.GetAwaiter().GetResult();
            process.WaitForExit();
            return text.Split('\n').FirstOrDefault(wanted);
        }
        catch (System.ComponentModel.Win32Exception)
        {
            return null;
        }
    }

    private static Process Start(string program, string[] words)
    {
        var start = new ProcessStartInfo(program) { RedirectStandardOutput = true, RedirectStandardError = true, UseShellExecute = false };
        foreach (var word in words)
        {
            start.ArgumentList.Add(word);
        }

        return Process.Start(start)!;
    }
}
