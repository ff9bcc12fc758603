using System.Globalization;
using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Bodies;
using Generator.Rules.Judging;
using Generator.Solver.Constructing;

namespace Generator.Solver.Tests.Constructing;

/// <summary>What a node has forgotten while it waited in a beam is worked out again to the letter.</summary>
public class ForgottenTests
{
    private const int Walks = 24;

    [Fact]
    public void What_a_node_has_forgotten_it_knows_again_the_same()
    {
        var (asked, later, hurts, entering) = (0, 0, 0, 0);
        for (var seed = 1; seed <= Walks; seed++)
        {
            var ground = new Ground(new Scene(DraftBrief.Complete(BriefOf(seed), Drafts.Book), Drafts.Book));
            var dice = new Dice((ulong)seed);
            var expander = new Expander(ground, dice);
            if (OpeningPlaces.Choose(ground, dice) is not { } placements)
            {
                continue;
            }

            var node = ground.Openings(placements).ElementAt(1);
            for (var depth = 0; depth < 12; depth++)
            {
                List<Node> children = [];
                expander.Expand(node, children);
                foreach (var child in children)
                {
                    var known = Told(ground.Scene, child);
                    child.Forget(expander.Maker);
                    Assert.Equal(known, Told(ground.Scene, child));
                    asked++;
                    later += child.LaterReturns.Length > 0 ? 1 : 0;
                    entering += child.LaterReturns.Any(r => r.Row == Node.AtEntrance) ? 1 : 0;
                    hurts += child.State.Hurts.Count > 0 ? 1 : 0;
                }

                if (children.Count == 0)
                {
                    break;
                }

                // Also whose parent has forgotten everything is worked out again.
                node = children[dice.Next(children.Count)];
                node.Forget(expander.Maker);
            }
        }

        Assert.True(asked > 1000 && later > 100 && entering > 20 && hurts > 20, $"{asked} nodes, {later} with later returns, {entering} with an entrance, {hurts} with something hurt");
    }

    [Fact]
    public void An_opening_forgets_nothing()
    {
        var ground = new Ground(new Scene(DraftBrief.Complete(Drafts.Small(1), Drafts.Book), Drafts.Book));
        var opening = ground.Openings(OpeningPlaces.Choose(ground, new Dice(1))!).First();
        opening.Forget(new Expander(ground, new Dice(1)).Maker);
        Assert.Equal(0, opening.State.Time);
    }

    private static Brief BriefOf(int seed) => seed % 3 == 0
        ? Drafts.Small(seed) with { Acts = [new Act(60, HeroStanding.InTrouble, null, new Hurt("left-arm", new HalfCounts(400))), new Act(40, HeroStanding.OnTop)], Setbacks = null }
        : Drafts.Small(seed);

    private static string Told(Scene scene, Node node)
    {
        var state = node.State;
        var people = Enumerable.Range(0, scene.Cast).Select(a => state.Attackers[a])
            .Select(s => $"{s with { Leg = null }} {string.Join(' ', s.Leg?.Chain().Select(Words) ?? [])}");
        var memories = RuleBook.All.Select(r => node.Score.MemoryOf(r.Id)?.ToString());
        return string.Join('\n', [$"{state with { Attackers = [], Hurts = [], Props = [] }}", .. people, .. state.Hurts.Select(h => h.ToString()), .. memories, string.Join(',', node.Score.PointsByRule), $"{node.Points}", Numbers(node.Anchors), Numbers(node.Lingers), Numbers(node.Exchanges), Numbers(node.Threats)]);
    }

    private static string Words(Leg leg) => string.Create(CultureInfo.InvariantCulture, $"{leg.Kind} {leg.Move} {leg.From}-{leg.To} {leg.Start} {leg.End}");

    private static string Numbers(int[] numbers) => string.Join(',', numbers);
}
