using Generator.Domain;
using Generator.Solver.Filling;
using Google.OrTools.Sat;

namespace Generator.Solver.Rules;

/// <summary>Nobody comes, stands, is sent or falls onto a body on the floor; looked at in answers.</summary>
public sealed class Underfoot : RuleModule
{
    public override string Id => "underfoot";

    public override void Post(MoveModel model)
    {
    }

    public override IEnumerable<IReadOnlyList<ILiteral>> Refute(ModelAnswer answer) =>
    [
        .. new FloorClashes(answer).Of(FloorConcern.Underfoot),
        .. new FloorEntrances(answer).Of(FloorConcern.Underfoot),
        .. new FloorRests(answer).AtTheHero(lying: true),
    ];
}
