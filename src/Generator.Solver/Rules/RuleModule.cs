using Generator.Solver.Filling;
using Generator.Solver.Staging;

namespace Generator.Solver.Rules;

/// <summary>
/// The solver's writing of a rule: constraints for what must never occur, charges for what is rough. The audit's writing, of the same name,
/// is in the rules room; neither calls the other.
/// </summary>
public abstract class RuleModule
{
    /// <summary>The id that the audit uses.</summary>
    public abstract string Id { get; }

    /// <summary>Posts the rule to rows of a routine.</summary>
    public abstract void Post(MoveModel model);

    /// <summary>Posts what of the rule a plan of exchanges can already tell; nothing for rules that need the moves.</summary>
    public virtual void Post(StagingModel plan)
    {
    }
}
