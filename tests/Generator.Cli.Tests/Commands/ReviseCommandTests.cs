using Generator.Domain;
using Generator.Library;
using Generator.Library.Files;
using Generator.Library.Reading;
using Generator.Rules;
using Generator.Rules.Judging;
using Generator.Solver.Reworking;
using Generator.Solver.Revising;
using Generator.Testing;
using Newtonsoft.Json.Linq;

namespace Generator.Cli.Tests.Commands;

/// <summary>A stored routine on the ferry, and every kind of change that a brief goes through after it was taught.</summary>
public class ReviseCommandTests
{
    private static readonly string Ferry = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Data", "ferry.routine.json"));

    private static readonly Routine Taught = RoutineReader.Parse(new SourceFile("taught.json", Ferry), Rig.Book).Value!;

    private const int MostChanged = 12;

    private static readonly (int First, int Last)[] Phrases = [(1, 7), (7, 12), (12, 16), (16, 22), (22, 25)];

    private static readonly Dictionary<string, Action<JObject>> Changes = new(StringComparer.Ordinal)
    {
        ["injured"] = b => b["attackers"]![2]!["limits"] = new JArray("no-back-fall"),
        ["removed"] = b => (((JArray)b["attackers"]!)[1]).Remove(),
        ["replaced"] = b => (b["attackers"]![2]!["name"], b["attackers"]![2]!["height"]) = ("Odile", 1.55),
        ["smaller floor"] = b => (b["floor"]!["width"], b["floor"]!["depth"], b["floor"]!["mark"]) = (7, 5.4, new JArray(3.5, 1.0)),
        ["obstacle"] = b => ((JArray)b["floor"]!["obstacles"]!).Add(JObject.Parse("""{ "name": "crate", "x": 5, "y": 2.6, "width": 0.5, "depth": 0.5 }""")),
        ["shorter"] = b => b["length"] = JObject.Parse("""{ "counts": 38, "tolerance": 2 }"""),
        ["longer"] = b => b["length"] = JObject.Parse("""{ "counts": 58, "tolerance": 2 }"""),
        ["slower"] = b => b["tempo"] = 50,
        ["moment added"] = b => ((JArray)b["moments"]!).Add(JObject.Parse("""{ "technique": "outside-reap", "attacker": "Piet", "counts": [24, 46] }""")),
    };

    /// <summary>
    /// What a large change may cost to teach anew. Where single changes do not do, the search that pays for changes by what they cost finds these; filling what is open alone came to three times as much. A longer fight takes a
    /// new move and two longer waits.
    /// </summary>
    private static readonly Dictionary<string, int> MostTaught = new(StringComparer.Ordinal) { ["smaller floor"] = 24, ["longer"] = 24 };

    public static TheoryData<string> Kinds => [.. Changes.Keys];

    [Theory]
    [MemberData(nameof(Kinds))]
    public void The_routine_is_fitted_to_the_changed_brief_and_passes_the_audit(string kind)
    {
        using var stop = new CancellationTokenSource();
        var most = MostTaught.GetValueOrDefault(kind, int.MaxValue);
        using var rig = StopsWhen(stop, r => RoutineChange.Between(Taught, r) is var c && c.Changed <= MostChanged && (MayTouchAll(kind) || APhraseStays(c)) && (most == int.MaxValue || CostOf(r, c) <= most));
        var (routine, brief, revised) = (rig.File("taught.json", Ferry), rig.File("now.brief.json", Changed(kind)), Path.Combine(rig.Folder, "revised.json"));
        Assert.NotEqual(ExitCode.Good, rig.Run("audit", routine, "--brief", brief).Code);
        var answer = rig.Run("revise", routine, "--brief", brief, "--out", revised, "--time", "1200", "--json");
        Assert.True(answer.Code == ExitCode.Good, answer.Err);
        var audit = rig.Run("audit", revised, "--brief", brief, "--json");
        Assert.Equal(ExitCode.Good, audit.Code);
        Assert.DoesNotContain(JObject.Parse(audit.Out)["findings"]!, f => (string?)f["severity"] is "unsafe" or "broken");

        var root = JObject.Parse(answer.Out);
        var now = JObject.Parse(Changed(kind));
        Assert.Equal(now["attackers"]!.Select(a => (string?)a["name"]).Prepend("Ines"), root["teaching"]!.Select(t => (string?)t["name"]));
        var changed = (int)root["changed"]!;
        Assert.InRange(changed, 0, MostChanged);
        Assert.InRange(root["teaching"]!.Sum(t => (int)t["cost"]!), 0, most);
        Assert.Equal(changed > 0, root["teaching"]!.Sum(t => (int)t["moves"]! + (int)t["gone"]!) > (kind == "removed" ? 5 : 0));
        Assert.Equal(Phrases.Select(p => p.First), root["phrases"]!.Select(p => (int)p["first"]!));
        Assert.Equal(Phrases.Select(p => p.Last), root["phrases"]!.Select(p => (int)p["last"]!));

        Assert.True(MayTouchAll(kind) || root["phrases"]!.Any(p => (bool)p["unchanged"]!), "no phrase is left as it was taught");
    }

    [Fact]
    public void Phrases_that_rehearsal_can_skip_are_named_as_they_were_taught()
    {
        using var rig = new Rig();
        var answer = rig.Run("revise", rig.File("taught.json", Ferry), "--brief", rig.File("now.brief.json", Changed("removed")), "--time", "1200");
        Assert.Equal(ExitCode.Good, answer.Code);
        Assert.Contains("5 moves go with those who are no longer in it. Nothing else changes.\n", answer.Out, StringComparison.Ordinal);
        Assert.Contains("\n  Ines forgets 5 moves (cost 25)\n  Bruno learns nothing anew\n  Piet learns nothing anew\n", answer.Out, StringComparison.Ordinal);
        Assert.Contains("\n  phrase 2, moves 7 to 12: unchanged, now moves 6 to 11\n  phrase 5, moves 22 to 25: unchanged, now moves 17 to 20\n", answer.Out, StringComparison.Ordinal);
        Assert.Contains("\n  phrase 1, moves 1 to 7: 6 goes\n  phrase 3, moves 12 to 16: 13 and 14 go\n", answer.Out, StringComparison.Ordinal);
        Assert.Contains("What is left answers the new brief as it is.\n", answer.Err, StringComparison.Ordinal);
    }

    [Fact]
    public void Whoever_takes_over_a_part_learns_all_of_it()
    {
        using var rig = new Rig();
        var answer = rig.Run("revise", rig.File("taught.json", Ferry), "--brief", rig.File("now.brief.json", Changed("replaced")), "--time", "1200");
        Assert.Equal(ExitCode.Good, answer.Code);
        Assert.Contains(" Odile does all as taught; takes over from Piet and learns all 9 moves of the part ", string.Join(' ', answer.Out.Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries)), StringComparison.Ordinal);
    }

    /// <summary>Nothing that is written in the routine changes, and yet it is walked otherwise.</summary>
    [Fact]
    public void A_mark_that_has_moved_is_told_with_the_ways_that_are_others()
    {
        using var rig = new Rig();
        var brief = JObject.Parse(Walk.Json)["brief"]!.ToString().Replace("5.5", "5.3", StringComparison.Ordinal);
        string[] words = ["revise", rig.File("taught.json", Walk.Json), "--brief", rig.File("now.brief.json", brief), "--time", "1200"];
        var answer = rig.Run(words);
        Assert.Equal(ExitCode.Good, answer.Code);
        Assert.Contains("\nNo move changes. 2 ways on the floor are others.\n", answer.Out, StringComparison.Ordinal);
        Assert.Contains("\n  Hero goes another way in 1 move (cost 1)\n  Bruno goes another way in 1 move (cost 1)\n", answer.Out, StringComparison.Ordinal);
        Assert.Contains("moves 1 to 2: 1 and 2 have another way on the floor\n", answer.Out, StringComparison.Ordinal);
        Assert.Contains("\n  sink: was at 5.50 m, 4.00 m, is at 5.30 m, 4.00 m; move 2 there\n  move 1, Hero to sink: 2.30 m towards 3, was 2.50 m towards 3\n  move 2, Bruno: from 3, 2.20 m off; was 3, 2.00 m\n", answer.Out, StringComparison.Ordinal);
        var marks = JObject.Parse(rig.Run([.. words, "--json"]).Out)["marks"]!;
        Assert.Equal((5.3m, 2.3m, 2.2m), ((decimal)marks["moved"]![0]!["is"]![0]!, (decimal)marks["ways"]![0]!["is"]!["way"]!, (decimal)marks["ways"]![1]!["is"]!["way"]!));
    }

    /// <summary>Another technique in one move is all that the injury asks for, and hero and attacker both learn it: nobody may stand where the front fall has been, for somebody comes in there.</summary>
    [Fact]
    public void Weights_are_settings() => Assert.Equal((8, 18), (CostOfOneTechnique(), CostOfOneTechnique("--technique-cost", "9")));

    private static int CostOfOneTechnique(params string[] weights)
    {
        using var stop = new CancellationTokenSource();
        using var rig = StopsWhen(stop, r => Unlike(r, m => m.Technique) == 1 && Unlike(r, m => (m.Start, m.Attacker, m.Attack)) == 0);
        var (routine, brief) = (rig.File("taught.json", Ferry), rig.File("now.brief.json", Changed("injured")));
        return JObject.Parse(rig.Run(["revise", routine, "--brief", brief, "--time", "1200", "--json", .. weights]).Out)["teaching"]!.Sum(t => (int)t["cost"]!);
    }

    /// <summary>What everybody has to learn anew, by the usual weights, where nobody has gone.</summary>
    private static int CostOf(Routine routine, RoutineChange change)
    {
        var scene = new Scene(routine.Brief, Rig.Book);
        return Reteaching.Of(new Reworked(scene, Taught, routine, Audit.Of(scene, routine), change), new ReviseOptions().Weights, MarkNews.None).Cost;
    }

    /// <summary>A fight that begins a count sooner leaves no phrase at its counts, and on a smaller floor somebody recovers for another while in each, though one move alone changes.</summary>
    private static bool MayTouchAll(string kind) => kind is "shorter" or "smaller floor";

    /// <summary>Every move of some phrase is as it was taught, at its counts.</summary>
    private static bool APhraseStays(RoutineChange change)
    {
        var kept = change.Moves.Where(m => m.Kind == ChangeKind.Kept).Select(m => m.Old + 1).ToHashSet();
        return Array.Exists(Phrases, p => Enumerable.Range(p.First, p.Last - p.First + 1).All(kept.Contains));
    }

    /// <summary>Moves that are other than they were taught; all of them where there are more or fewer.</summary>
    private static int Unlike<T>(Routine routine, Func<Move, T> what) =>
        routine.Moves.Count == Taught.Moves.Count ? routine.Moves.Zip(Taught.Moves).Count(p => !Equals(what(p.First), what(p.Second))) : routine.Moves.Count;

    /// <summary>Stops a search once the routine is what the test looks for.</summary>
    private static Rig StopsWhen(CancellationTokenSource stop, Func<Routine, bool> enough) => new()
    {
        Stop = stop.Token,
        Keep = (routine, _) =>
        {
            if (enough(routine()))
            {
                stop.Cancel();
            }
        },
    };

    private static string Changed(string kind)
    {
        var brief = (JObject)JObject.Parse(Ferry)["brief"]!;
        Changes[kind](brief);
        brief["ending"] = new JObject { ["out"] = "all" };
        return brief.ToString();
    }
}
