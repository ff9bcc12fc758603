using Generator.Rules.Replaying;
using Generator.Solver.Engine;
using Generator.Solver.Filling;
using Generator.Solver.Rules;
using Xunit.Abstractions;
namespace Generator.Solver.Tests.Twin;
public sealed class DebugTests(ITestOutputHelper output)
{
    [Fact]
    public void Debug()
    {
        var world = new TinyWorld(198);
        var clean = Exhaustive.Clean(world);
        output.WriteLine(string.Join("\n", clean.Keys) + " rows " + world.Rows);
        output.WriteLine(world.Brief.ToString());
        foreach (var p in world.Placements) output.WriteLine(p.ToString());
        foreach (var m in RuleModules.All.Select(r => r.Id).Prepend("none"))
        {
            var model = new MoveModel(world.Scene, Vocabulary.Of(world.Scene), new MoveModelOptions { Rows = world.Rows, FewestRows = 1, Ends = true, MostWalkRound = 0, Horizon = 40, Without = new HashSet<string> { m } });
            Pin.Placements(model, world.Placements);
            foreach (var slot in model.Slots) model.Cp.Model.Add(slot.Gap <= world.MostGap);
            using var s = new CpSession(model.Cp.Model);
            var a = s.Solve(new SearchSettings { Bare = true, Linear = false });
            if (a != CpAnswer.Infeasible) output.WriteLine($"without {m}: {a} " + Exhaustive.Key(RowReader.Rows(model, s)));
        }
    }
}
