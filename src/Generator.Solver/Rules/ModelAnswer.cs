using Generator.Solver.Filling;
using Google.OrTools.Sat;

namespace Generator.Solver.Rules;

/// <summary>An answer of a move model, for rules to look at.</summary>
/// <param name="model">Whose answer it is. New variables may be made for clauses.</param>
/// <param name="value">Values of the model's variables in the answer.</param>
public sealed class ModelAnswer(MoveModel model, Func<IntVar, long> value)
{
    private FloorWays? ways;

    public MoveModel Model => model;

    public Func<IntVar, long> Value => value;

    /// <summary>The ways of everybody, worked out when a rule first asks.</summary>
    internal FloorWays Ways => ways ??= new FloorWays(model, value);
}
