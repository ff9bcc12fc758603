using Google.OrTools.Sat;

namespace Generator.Solver.Filling;

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

    /// <summary>
    /// What of the rule would be too much to post beforehand: clauses that the rule demands of every routine and that the answer breaks; none when the answer keeps the
    /// rule. The more other answers a clause rules out as well, the sooner the search is done.
    /// </summary>
    /// <param name="answer">The answer.</param>
    public virtual IEnumerable<IReadOnlyList<ILiteral>> Refute(ModelAnswer answer) => [];
}
