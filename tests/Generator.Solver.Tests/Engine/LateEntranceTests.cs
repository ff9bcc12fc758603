using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Replaying;
using Generator.Solver.Engine;
using Generator.Solver.Filling;
using Generator.Solver.Rules;
using Generator.Solver.Tests.Constructing;

namespace Generator.Solver.Tests.Engine;

public sealed class LateEntranceTests
{
    /// <summary>Who comes in at count 50 is in nobody's way at count 1: a window that ends long before has an answer.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(6)]
    public void A_window_ends_before_somebody_comes_in(int delay)
    {
        var brief = new Brief { Tempo = new Tempo(120), Attackers = [new AttackerPart { Name = "Esra" }, new AttackerPart { Name = "Cleo", Entrance = HalfCounts.FromCounts(49) }] };
        var scene = new Scene(brief, Drafts.Book);
        Placement[] placements = [new(default, new Centimetres(200), default), new(new Bearing(6), new Centimetres(300), HalfCounts.FromCounts(49))];
        var model = new MoveModel(scene, Vocabulary.Of(scene, t => t.Family == Family.Defence), new MoveModelOptions
        {
            Rules = RuleModules.All,
            From = Replay.Open(scene, placements),
            Rows = 1,
            FewestRows = 1,
            Ends = false,
            Horizon = 38,
            Delays = [0, delay],
        });
        using var session = model.Session();
        session.Solve(new SearchSettings { Time = Drafts.Hang, Bare = true, Linear = false });

        Assert.True(session.HasSolution);
        Assert.InRange(session.Value(model.Entrances[1]), 98, 98 + delay);
    }
}
