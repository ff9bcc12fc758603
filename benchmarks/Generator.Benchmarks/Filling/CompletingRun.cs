using System.Globalization;
using Generator.Benchmarks.Measuring;
using Generator.Benchmarks.Peers;
using Generator.Benchmarks.Peers.MiniZinc;

namespace Generator.Benchmarks.Filling;

/// <summary>
/// How long completing takes where only the techniques are said: 12, 40 and 120 rows, each routine in a process of its own, a window of five moves, and the same question asked of plain CP-SAT and
/// of Gecode at the sizes that they may finish. Writes <c>results/completing.md</c>. Options: <c>--count 8</c>, <c>--time 20</c>, <c>--peers 2</c> (routines for the other ways), <c>--limit 20</c> (seconds for them).
/// </summary>
internal static class CompletingRun
{
    private const double WindowAim = 0.1, MemoryAim = 500;

    private static readonly IReadOnlyList<(string Family, double Aim)> Sizes = [("12x2", 0.3), ("40x4", 1), ("loose-120x8", 4)];

    /// <summary>Families of which the other ways are asked.</summary>
    private static readonly IReadOnlyList<string> Small = ["loose-6x2", "12x2"];

    public static int All(string[] args)
    {
        var options = args.Chunk(2).Where(c => c.Length == 2).ToDictionary(c => c[0], c => int.Parse(c[1], CultureInfo.InvariantCulture), StringComparer.Ordinal);
        var (count, time, peers, limit) = (options.GetValueOrDefault("--count", 8), options.GetValueOrDefault("--time", 20), options.GetValueOrDefault("--peers", 2), options.GetValueOrDefault("--limit", 20));
        var machine = Machine.Now();
        var rows = new MarkdownTable("techniques said of", "completed, nothing gave", "completed, something gave", "not found", "first answer, s", "its processor time, s", "nothing gives, s", "aim, s", "peak memory, MiB");
        foreach (var (family, aim) in Sizes)
        {
            var answers = Files(family).Take(count).Select(f => Ours(f, time)).ToList();
            var found = answers.Where(a => a.Trace.Count > 0).ToList();
            var clean = found.Where(a => a.Trace[^1].Points == 0).ToList();
            rows.Row(family, Text(clean.Count), Text(found.Count - clean.Count), Text(answers.Count - found.Count), Seconds(found.Select(a => a.Trace[0].Wall)), Seconds(found.Select(a => a.Trace[0].Processor)), Seconds(clean.Select(a => a.Trace[^1].Wall)), $"{Text(aim)}", Quartiles.Of(answers.Select(a => (double?)a.Peak))?.ToText("0") ?? "–");
            Console.WriteLine($"{family}: {clean.Count} of {answers.Count}");
        }

        var took = WindowRun.Took(0, 5, 4);
        rows.Row("40x4, a window of 5 moves left open", Text(took.Count), "–", Text(WindowRun.Windows - took.Count), Seconds(took.Select(s => 1000 * s)), "–", "–", Text(WindowAim), "–");
        var path = Path.Combine(Places.Results, "completing.md");
        File.WriteAllText(path, $"""
            # Completing

            Made by `dotnet run -c Release --project benchmarks/Generator.Benchmarks -- completing`, {machine.Date}, {machine.Processor}, {machine.Cores} cores, {machine.Runtime}, load over the minute before {machine.Load}.
            Routines drafted from the stored briefs, of which only the techniques and the brief are said: who comes, attacks, reactions, counts and opening places are open. Each in a process of its own
            that has drafted the routine before. Medians, in brackets the least, [the quartiles] and the greatest; seconds by the clock, or of the processor where it says so. Memory at most {MemoryAim:0} MiB.

            {rows}
            ## The same question asked the other ways

            "Plain CP-SAT" and "MiniZinc" are as in `report.md`, the techniques of all rows fixed, at most {limit} s of both cores. Seconds of processor time to the first answer, model and flattening
            included; "≥" where there was none. Every answer is read back and audited; nobody sets off before count 1 there, which makes some infeasible.

            {Others(peers, limit, time)}
            """);
        Console.WriteLine($"Everything: {path}");
        return 0;
    }

    private static MarkdownTable Others(int count, int limit, int time)
    {
        var table = new MarkdownTable("brief", "way", "ended", "first answer, s", "times ours", "answers that the audit passes");
        foreach (var file in Small.SelectMany(f => Files(f).Take(count)))
        {
            var ours = Ours(file, time);
            double? first = ours.Trace is [var at, ..] ? at.Processor : null;
            table.Row(ours.Brief, "ours", ours.Status, first is { } f ? Text(f / 1000) : "–", "1", "all");
            List<PeerAnswer> answers = [PeerRun.Ask(file, PlainChild.Peer, PlainChild.Word, file, Text(limit), "2", Question.Filling)];
            if (Gecode.Version() is not null)
            {
                answers.AddRange(SearchWay.All.Select(way => PeerRun.Ask(file, GecodeChild.PeerOf(way), GecodeChild.Word, file, Text(limit), "2", way.Choice, Question.Filling)));
            }

            foreach (var answer in answers)
            {
                var peer = new PeerTime(ByProcessor: true);
                var (least, theirs) = (answer.Trace.Count > 0 ? string.Empty : "≥ ", peer.Before(answer) + peer.First(answer));
                table.Row(answer.Brief, answer.Peer, answer.Status, least + Text(theirs / 1000), first is { } our ? least + Text(Math.Round(theirs / our)) : "–", $"{answer.Agreed} of {answer.Audited}");
            }
        }

        return table;
    }

    private static PeerAnswer Ours(string file, int time) => PeerRun.Ask(file, "ours", CompletingChild.Word, file, Text(time));

    private static IEnumerable<string> Files(string family) => Stored.Family.All.First(f => string.Equals(f.Name, family, StringComparison.Ordinal)).Files;

    private static string Text(double number) => number.ToString("0.##", CultureInfo.InvariantCulture);

    private static string Seconds(IEnumerable<double> milliseconds) => Quartiles.Of(milliseconds.Select(m => (double?)(m / 1000)))?.ToText("0.00") ?? "–";
}
