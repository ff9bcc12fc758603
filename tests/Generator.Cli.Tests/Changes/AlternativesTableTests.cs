using Generator.Cli.Changes;
using Generator.Domain;
using Generator.Library.Files;
using Generator.Library.Reading;
using Generator.Rules;
using Generator.Rules.Judging;
using Generator.Solver.Alternatives;

namespace Generator.Cli.Tests.Changes;

public class AlternativesTableTests
{
    private static readonly Routine Ferry = RoutineReader.Parse(new SourceFile("ferry.json", File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Data", "ferry.routine.json"))), Rig.Book).Value!;

    /// <summary>What the hero does alone is done on nobody, also beside a moment.</summary>
    [Fact]
    public void What_is_done_alone_is_done_on_nobody()
    {
        var at = Ferry.Moves.Count - 1;
        var breath = Ferry.Moves[0] with { Technique = "catch-breath", Attack = null, Attacker = null, Reaction = null };
        var routine = Ferry with
        {
            Brief = Ferry.Brief with { Moments = [new Moment([new MomentMove(Ferry.Moves[at].Technique!, null, null, null)], null, null)] },
            Moves = [.. Ferry.Moves.Take(at), breath, Ferry.Moves[at]],
        };
        var scene = new Scene(routine.Brief, Rig.Book);
        var text = AlternativesTable.Of(scene, [new Alternative(routine, Audit.Of(scene, routine), Shape.Of(scene, routine))]);
        var reached = Assert.Single(text.Split('\n'), l => l.StartsWith("reached by", StringComparison.Ordinal));
        Assert.EndsWith("Catch breath", reached.TrimEnd(), StringComparison.Ordinal);
        Assert.Contains(" on " + Ferry.Brief.Attackers[Ferry.Moves[at].Attacker!.Value].Name, text, StringComparison.Ordinal);
    }
}
