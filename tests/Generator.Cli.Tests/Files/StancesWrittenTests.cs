using Generator.Cli.Tests.Guarding;
using Generator.Domain;
using Generator.Solver;
using Generator.Solver.Questions;
using Newtonsoft.Json.Linq;

namespace Generator.Cli.Tests.Files;

/// <summary>What a command prints in the end and what it keeps on the way, in case that it does not come to an end.</summary>
public class StancesWrittenTests
{
    private static readonly string Ferry = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Data", "ferry.routine.json"));

    [Fact]
    public void In_a_draft_that_is_stopped_and_in_what_it_keeps() =>
        Kept(rig => ["draft", rig.File("b.brief.json", Guarded.NeverDone)]);

    [Fact]
    public void In_notes_that_are_filled_and_in_what_is_kept_of_them() =>
        Kept(rig => ["complete", rig.File("f.notes.txt", "Bruno: wide swing > low parry, elbow to the face\nWanda from 3: comes in > push kick\nBruno: jab > slips, cross (head back)\nWanda: front kick > down block\nBruno: > hip throw\n")]);

    [Fact]
    public void In_a_repair_and_in_what_is_kept_of_it() => Kept(rig =>
    {
        var routine = JObject.Parse(Ferry);
        (routine["moves"]![11]!["technique"], routine["moves"]![11]!["reaction"]) = ("release-push", "staggers-back");
        return ["repair", rig.File("broken.routine.json", routine.ToString())];
    });

    [Fact]
    public void In_a_revision_and_in_what_is_kept_of_it() => Kept(rig =>
    {
        var brief = (JObject)JObject.Parse(Ferry)["brief"]!;
        brief["length"] = JObject.Parse("""{ "counts": 50, "tolerance": 2 }""");
        return ["revise", rig.File("taught.routine.json", Ferry), "--brief", rig.File("longer.brief.json", brief.ToString())];
    });

    /// <summary>Stops at the first routine that is kept.</summary>
    private static void Kept(Func<Rig, string[]> line)
    {
        using var stop = new CancellationTokenSource();
        var kept = new List<Routine>();
        using var rig = new Rig
        {
            Draft = Drafting.Draft,
            Stop = stop.Token,
            Keep = (routine, _) =>
            {
                kept.Add(routine());
                stop.Cancel();
            },
        };
        var answer = rig.Run([.. line(rig), "--time", "1200", "--json"]);
        Assert.True(kept.Count > 0, answer.Err);
        Assert.All(kept, StancesWritten.In);
        StancesWritten.In(JObject.Parse(answer.Out)["routine"]!.ToString());
    }
}
