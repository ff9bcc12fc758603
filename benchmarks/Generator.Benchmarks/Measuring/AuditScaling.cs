using System.Globalization;
using Generator.Rules.Judging;

namespace Generator.Benchmarks.Measuring;

/// <summary>What an audit costs a move as routines grow: the same phrase over and over, in routines of 100, 1,000 and 10,000 moves.</summary>
internal static class AuditScaling
{
    /// <summary>Moves of each routine; the first is what the others are set in relation to.</summary>
    public static readonly IReadOnlyList<int> Lengths = [100, 1000, 10_000];

    private const int Runs = 15;

    /// <summary>Moves audited in one run, so that short routines are timed as long as long ones.</summary>
    private const int MovesInRun = 20_000;

    /// <summary>Prints the table, and keeps it as <c>benchmarks/results/audit-scaling.md</c>.</summary>
    public static int All()
    {
        var path = Path.Combine(Places.Results, "audit-scaling.md");
        var machine = Machine.Now();
        var text = string.Create(CultureInfo.InvariantCulture, $"""
            # What an audit costs a move

            Made by `dotnet run -c Release --project benchmarks/Generator.Benchmarks -- scaling`; {machine.Date}, {machine.Processor}, {machine.Cores} cores, load {machine.Load}, {machine.Runtime}.
            Processor time, median of {Runs} runs of {MovesInRun} moves each.

            {Table()}
            """);
        File.WriteAllText(path, text);
        Console.Write(text);
        Console.WriteLine(path);
        return 0;
    }

    /// <summary>Time and memory a move of each length, and as multiples of the first.</summary>
    public static string Table()
    {
        var scene = LongRoutine.Scene(LongRoutine.Book());

        // Once without counting, until everything is compiled as well as it will be.
        Of(scene, Lengths[1]);
        var figures = Lengths.Select(l => Of(scene, l)).ToList();
        var table = new MarkdownTable("moves", "µs a move", "× the first", "bytes a move", "× the first");
        foreach (var ((time, bytes), moves) in figures.Zip(Lengths))
        {
            table.Row(
                moves.ToString(CultureInfo.InvariantCulture),
                time.ToString("0.00", CultureInfo.InvariantCulture),
                (time / figures[0].Time).ToString("0.00", CultureInfo.InvariantCulture),
                bytes.ToString("0", CultureInfo.InvariantCulture),
                (bytes / figures[0].Bytes).ToString("0.00", CultureInfo.InvariantCulture));
        }

        return table.ToString();
    }

    private static (double Time, double Bytes) Of(Rules.Scene scene, int moves)
    {
        var routine = LongRoutine.Of(scene, moves);
        var (times, bytes) = (new List<double>(), 0.0);
        var repeats = Math.Max(1, MovesInRun / moves);
        for (var run = -3; run < Runs; run++)
        {
            var (used, allocated) = (Environment.CpuUsage.TotalTime, GC.GetAllocatedBytesForCurrentThread());
            for (var i = 0; i < repeats; i++)
            {
                Audit.Of(scene, routine);
            }

            var all = (double)repeats * moves;
            bytes = (GC.GetAllocatedBytesForCurrentThread() - allocated) / all;
            if (run >= 0)
            {
                times.Add((Environment.CpuUsage.TotalTime - used).TotalMicroseconds / all);
            }
        }

        return (times.Order().ElementAt(times.Count / 2), bytes);
    }
}
