using System.Diagnostics;
using System.Globalization;
using Generator.Benchmarks.Measuring;
using Generator.Domain;
using Generator.Library;
using Generator.Library.Files;
using Generator.Library.Reading;
using Generator.Solver.Explaining;

namespace Generator.Benchmarks.Explaining;

/// <summary>
/// How long it takes to explain the stored briefs that no routine can satisfy: seconds by the clock and in processor time of all threads, whether the
/// clashes are proven and shown to be minimal, and whether every way out was looked at.
/// </summary>
internal static class ExplainRun
{
    public static int All(string[] args)
    {
        var only = args is ["--only", var word] ? word : string.Empty;
        var book = LongRoutine.Book();
        var machine = Machine.Now();
        List<(string Name, double Clock, double Work, BriefExplanation Told)> rows = [];
        foreach (var file in Directory.EnumerateFiles(Places.Clashes, "*.brief.json").Order(StringComparer.Ordinal))
        {
            var name = Path.GetFileName(file).Split('.')[0];
            if (!name.Contains(only, StringComparison.Ordinal))
            {
                continue;
            }

            var brief = Read(file, book);
            var (clock, began) = (Stopwatch.StartNew(), Work());
            var told = Explain.Of(brief, book, new ExplainOptions());
            rows.Add((name, clock.Elapsed.TotalSeconds, Work() - began, told));
            Console.Error.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{name}: {told.Brief}, {clock.Elapsed.TotalSeconds:0.0} s"));
        }

        var table = new MarkdownTable("brief", "answer", "clock, s", "processor, s", "proven", "minimal", "complete", "clashes", "statements in the first", "ways out");
        foreach (var (name, clock, work, told) in rows)
        {
            table.Row(name, told.Brief.ToString(), Seconds(clock), Seconds(work), YesNo(told.Proven), YesNo(told.Minimal), YesNo(told.Complete), Number(told.Clashes.Count), Number(told.Clashes.Count > 0 ? told.Clashes[0].Count : 0), Number(told.GiveUps.Count));
        }

        var text = string.Create(CultureInfo.InvariantCulture, $"""
            # Explaining briefs that no routine can satisfy

            {machine.Processor}, {machine.Cores} cores; {machine.Runtime}; {machine.Solver}; {machine.Date}; load when the run began: {machine.Load}.
            Time limit {new ExplainOptions().Time.TotalSeconds:0} s a brief. Minimal: each clash was shown to be solvable without any one of its statements. Complete: every way out was looked at.

            {table}
            Seconds, median (least [quartiles] greatest): clock {Quartiles.Of(rows.Select(r => (double?)r.Clock))?.ToText("0.0")}, processor {Quartiles.Of(rows.Select(r => (double?)r.Work))?.ToText("0.0")}.
            Impossible: {rows.Count(r => r.Told.Brief == Answer.Impossible)} of {rows.Count}; proven and minimal: {rows.Count(r => r.Told is { Brief: Answer.Impossible, Proven: true, Minimal: true })}; complete as well: {rows.Count(r => r.Told is { Brief: Answer.Impossible, Proven: true, Minimal: true, Complete: true })}.

            """);
        Console.WriteLine(text);
        Directory.CreateDirectory(Places.Artifacts);
        var path = Path.Combine(Places.Artifacts, "explain.md");
        File.WriteAllText(path, text);
        Console.WriteLine($"The same: {path}");
        return 0;
    }

    private static Brief Read(string file, Book book)
    {
        var problems = new ProblemList();
        var read = SourceFile.Load(file, problems) is { } source ? BriefReader.Parse(source, book) : null;
        return read?.Value ?? throw new InvalidOperationException(read?.ToText() ?? $"{file} cannot be read.");
    }

    private static string YesNo(bool value) => value ? "yes" : "no";

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);

    private static string Seconds(double seconds) => seconds.ToString("0.0", CultureInfo.InvariantCulture);

    private static double Work()
    {
        using var own = Process.GetCurrentProcess();
        return own.TotalProcessorTime.TotalSeconds;
    }
}
