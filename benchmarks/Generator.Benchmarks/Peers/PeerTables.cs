using System.Globalization;
using System.Text;
using Generator.Benchmarks.Measuring;
using Generator.Benchmarks.Stored;

namespace Generator.Benchmarks.Peers;

/// <summary>The tables that set the other ways beside ours, brief by brief.</summary>
internal static class PeerTables
{
    /// <summary>How many times sooner than MiniZinc our first routine is aimed to be, from 24 moves against three on.</summary>
    private const double Aim = 20;

    public static string Of(PeerResults peers, Results ours)
    {
        var time = new PeerTime(peers.ByProcessor > 0 || ours.ByProcessor > 0);
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture, $"### Time to the first valid routine, s{(time.ByProcessor ? " of processor time" : string.Empty)}, and as a multiple of ours\n\n{First(peers, ours, time)}\n");
        text.Append(CultureInfo.InvariantCulture, $"### Points at the end of the time, proof and memory\n\n{Ends(peers, ours, time)}\n");
        text.Append(CultureInfo.InvariantCulture, $"### Whether they solve the same task\n\n{Same(peers)}");
        return text.ToString();
    }

    private static string First(PeerResults peers, Results ours, PeerTime time)
    {
        var table = new MarkdownTable("size", "way", "found", "model and translation", "flattening", "solver, to the first", "× ours, all together", "× ours, solver alone", "aim");
        foreach (var (size, peer, pairs) in Sets(peers, ours, time))
        {
            var together = Ratios(pairs, p => time.Before(p) + time.First(p), time.First);
            var (aim, reached) = size is "24x3" or "40x4" ? (Aim, together.Median) : (1, together.Least);
            var censored = pairs.Any(p => p.Peer.Trace.Count == 0);
            var word = peer.StartsWith("MiniZinc", StringComparison.Ordinal) ? $"≥ {aim}: {(reached >= aim ? "met" : censored ? "not shown within the time" : "MISSED")}" : string.Empty;
            table.Row(
                size,
                peer,
                string.Create(CultureInfo.InvariantCulture, $"{pairs.Count(p => p.Peer.Trace.Count > 0)} of {pairs.Count}"),
                Seconds(pairs.Select(p => time.Build(p.Peer))),
                Seconds(pairs.Select(p => time.Flatten(p.Peer))),
                Seconds(pairs.Where(p => p.Peer.Trace.Count > 0).Select(p => time.First(p.Peer))),
                together.Text,
                Ratios(pairs, time.First, time.First).Text,
                word);
        }

        return table.ToString();
    }

    private static string Ends(PeerResults peers, Results ours, PeerTime time)
    {
        var table = new MarkdownTable("size", "way", "points", "ours", "optimal, proven", "ours", "to the proof, × ours", "memory, MiB", "× ours");
        foreach (var (size, peer, pairs) in Sets(peers, ours, time))
        {
            table.Row(
                size,
                peer,
                Quartiles.Of(pairs.Where(p => p.Peer.Trace.Count > 0).Select(p => (double?)p.Peer.Trace[^1].Points))?.ToText("0.#") ?? "–",
                Quartiles.Of(pairs.Where(p => p.Ours.Trace.Count > 0).Select(p => (double?)p.Ours.Trace[^1].Points))?.ToText("0.#") ?? "–",
                string.Create(CultureInfo.InvariantCulture, $"{pairs.Count(p => PeerTime.IsProven(p.Peer))} of {pairs.Count}"),
                string.Create(CultureInfo.InvariantCulture, $"{pairs.Count(p => p.Ours.Proven is not null)} of {pairs.Count}"),
                Ratios(pairs.Where(p => p.Ours.Proven is not null).ToList(), time.Proof, time.Proof, p => !PeerTime.IsProven(p)).Text,
                Quartiles.Of(pairs.Select(p => p.Peer.Peak > 0 ? (double?)p.Peer.Peak : null))?.ToText("0") ?? "–",
                Ratios(pairs, p => p.Peak, o => o.Peak, _ => false).Text);
        }

        return table.ToString();
    }

    private static string Same(PeerResults peers)
    {
        var pinned = peers.Answers.Where(a => a.Peer == PeerRun.Pinned).ToList();
        var read = peers.Answers.Where(a => a.Peer != PeerRun.Pinned).ToList();
        var odd = pinned.Where(p => p.Status != "Agreed").Select(p => $"{p.Brief}: {p.Status}").Concat(read.Where(a => a.Agreed != a.Audited || a.Status == "Failed").Select(a => $"{a.Brief}, {a.Peer}: {a.Status}, {a.Agreed} of {a.Audited} answers agreed")).ToList();
        return string.Create(CultureInfo.InvariantCulture, $"Our own drafts, pinned row by row, are accepted at the very points that the audit counts: {pinned.Count(p => p.Status == "Agreed")} of {pinned.Count}. ")
            + string.Create(CultureInfo.InvariantCulture, $"Answers of the other ways that the audit passes at the very points that the solver counted: {read.Sum(a => a.Agreed)} of {read.Sum(a => a.Audited)}.\n")
            + string.Concat(odd.Select(o => $"- {o}\n"));
    }

    private static string Seconds(IEnumerable<double> milliseconds) => Quartiles.Of(milliseconds.Select(m => (double?)m / 1000))?.ToText("0.##") ?? "–";

    /// <summary>Multiples of ours; a run that ended without counts with all of its time, so that with such runs the figures are lower bounds.</summary>
    private static (string Text, double Least, double Median) Ratios(IReadOnlyCollection<Pair> pairs, Func<PeerAnswer, double> theirs, Func<Measurement, double?> ours, Func<PeerAnswer, bool>? capped = null)
    {
        capped ??= a => a.Trace.Count == 0;
        var ratios = Quartiles.Of(pairs.Select(p => theirs(p.Peer) / ours(p.Ours)));
        return ratios is null ? ("–", 0, 0) : ((pairs.Any(p => capped(p.Peer)) ? "≥ " : string.Empty) + ratios.ToText("0.#"), ratios.Least, ratios.Median);
    }

    /// <summary>Each size and way; of several ways to tell Gecode how to search also the one that was sooner on each brief.</summary>
    private static IEnumerable<(string Size, string Peer, List<Pair> Pairs)> Sets(PeerResults peers, Results ours, PeerTime time)
    {
        var fresh = ours.Measurements.Where(m => m.IsFresh && m.First is not null).ToDictionary(m => m.Brief, StringComparer.Ordinal);
        var answers = peers.Answers.Where(a => a.Peer != PeerRun.Pinned && fresh.ContainsKey(a.Brief)).ToList();
        foreach (var size in PeerRun.Sizes)
        {
            var names = Family.All.Where(f => f.Size == size).Select(f => f.Name + "-").ToList();
            var here = answers.Where(a => names.Exists(n => a.Brief.StartsWith(n, StringComparison.Ordinal))).ToList();
            foreach (var way in here.GroupBy(a => a.Peer, StringComparer.Ordinal))
            {
                yield return (size, way.Key, [.. way.Select(a => new Pair(a, fresh[a.Brief]))]);
            }

            var sooner = here.Where(a => a.Peer.StartsWith("MiniZinc", StringComparison.Ordinal)).GroupBy(a => a.Brief, StringComparer.Ordinal).Select(g => g.OrderBy(a => a.Trace.Count == 0).ThenBy(time.First).First()).ToList();
            if (sooner.Count > 0)
            {
                yield return (size, "MiniZinc, the sooner of both", [.. sooner.Select(a => new Pair(a, fresh[a.Brief]))]);
            }
        }
    }

    private sealed record Pair(PeerAnswer Peer, Measurement Ours);
}
