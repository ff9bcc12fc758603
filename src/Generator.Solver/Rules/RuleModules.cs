using Generator.Solver.Filling;
using Generator.Solver.Staging;

namespace Generator.Solver.Rules;

/// <summary>All rules on the solver's side, in the order of the help.</summary>
public static class RuleModules
{
    public static readonly IReadOnlyList<RuleModule> All =
    [
        new FlowStance(), new FlowHands(), new FlowFacing(), new InReach(), new Thing(), new Prop(), new AnswersAttack(), new Opening(), new NearestFirst(),
        new ResetWindow(), new NoWaiting(), new DeadAir(), new OneContact(), new ClearLane(), new Spacing(), new Underfoot(), new Grip(), new OutStaysOut(),
        new Able(), new Exposure(), new TempoFloor(), new BlindSide(), new Sightline(), new Variety(), new Share(), new Arc(), new Rhythm(), new Story(), new Climax(), new Thinning(), new Manner(), new Momentum(), new Echo(), new Purpose(),
        new Length(), new Ending(), new Moments(), new Music(), new Setbacks(),
    ];

    /// <summary>Those of which a plan of exchanges can tell something.</summary>
    public static readonly IReadOnlyList<IPlanRule> OfPlans = [.. All.OfType<IPlanRule>()];

    /// <summary>All but those with these ids.</summary>
    public static IReadOnlyList<RuleModule> Without(params IReadOnlyList<string> ids) => [.. All.Where(m => !ids.Contains(m.Id))];
}
