using Generator.Benchmarks.Peers.MiniZinc;
using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Replaying;
using Generator.Solver;
using Generator.Solver.Engine;
using Generator.Solver.Filling;
using Generator.Solver.Questions;
using Newtonsoft.Json;

namespace Generator.Benchmarks.Peers;

/// <summary>
/// Whether the plain formulation, and its translation, say the same as the audit: our own draft of the brief, pinned row by row, must be a solution
/// of both at the points that the audit counts. Prints a line.
/// </summary>
internal static class PinnedChild
{
    public const string Word = "pinned-one";

    /// <summary>Drafts tried until one starts with nobody under way.</summary>
    private const int Seeds = 30;

    public static int Run(string file)
    {
        var stored = StoredBrief.Read(file);
        var draft = Enumerable.Range(1, Seeds).Select(seed => Drafting.Draft(stored.Brief, stored.Book, new DraftOptions { Seed = seed })).FirstOrDefault(StartsByItself);
        if (draft is not { Routine: { } routine, Verdict: { } verdict })
        {
            return 2;
        }

        var opened = routine.Brief with { Attackers = [.. routine.Brief.Attackers.Select((a, i) => Opened(a, routine.Placements[i]))] };
        var plain = PlainModel.Of(opened, stored.Book, routine.Moves.Count);
        Pin.Rows(plain.Model, [.. routine.Moves.Select(m => Row.Of(m, plain.Scene))]);
        using var session = plain.Model.Session();
        var solved = session.Solve(new SearchSettings { Time = TimeSpan.FromSeconds(120), Bare = true, Linear = false });
        var words = new List<string>();
        Judge("plain CP-SAT", solved is not (CpAnswer.Unknown or CpAnswer.Feasible), solved == CpAnswer.Optimal ? session.Objective : null);
        if (Gecode.Version() is not null)
        {
            var (finished, points) = ByGecode(plain);
            Judge("MiniZinc with Gecode", finished, points);
        }

        Console.WriteLine(JsonConvert.SerializeObject(new PeerAnswer { Brief = stored.Name, Peer = "pinned", Status = words.Count == 0 ? "Agreed" : string.Join("; ", words) }));
        return 0;

        void Judge(string peer, bool finished, long? points)
        {
            if (!finished)
            {
                words.Add($"{peer} did not finish");
            }
            else if (points != verdict.Points)
            {
                words.Add($"{peer} {(points is null ? "rejects the draft" : $"counts {Words.Text(points.Value)}")} where the audit counts {Words.Text(verdict.Points)}");
            }
        }
    }

    /// <summary>Its first attacker comes in after count 1: a row model leaves out those who set off before.</summary>
    private static bool StartsByItself(DraftResult result)
    {
        if (result.Routine is not { } routine)
        {
            return false;
        }

        var scene = new Scene(routine.Brief, LongRoutine.Book());
        return Replay.LeadIn(scene, routine.Placements, Row.Of(routine.Moves[0], scene)) == 0;
    }

    private static AttackerPart Opened(AttackerPart attacker, Placement placement) =>
        attacker with { Bearing = placement.Bearing, Distance = placement.Distance, Entrance = placement.Entrance };

    private static (bool Finished, long? Points) ByGecode(PlainModel plain)
    {
        var path = Path.Combine(Path.GetTempPath(), $"pinned-{Environment.ProcessId}.mzn");
        var flat = Path.ChangeExtension(path, ".fzn");
        File.WriteAllText(path, new Translation(plain).Text(SearchWay.All[0]));
        Gecode.Flatten(path, flat);
        long? points = null;
        var (word, _, _, _) = Gecode.Solve(flat, TimeSpan.FromSeconds(60), Environment.ProcessorCount, (answer, _, _) => points = answer[^1]);
        foreach (var left in new[] { path, flat, Path.ChangeExtension(path, ".ozn") })
        {
            File.Delete(left);
        }

        return (word is "complete" or "UNSATISFIABLE", points);
    }
}
