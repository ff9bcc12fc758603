using Generator.Domain;
using Generator.Rules.Replaying;

namespace Generator.Rules.Rules;

/// <summary>
/// A rule of the audit, written as a fold: it looks at one step after another and keeps a small immutable memory of its own.
/// The same code audits a whole routine, scores the beginning of one in a search, and recounts what the solver minimised.
/// </summary>
public abstract class Rule
{
    /// <summary>Id in kebab-case, the same on the solver's side and as name of the help page.</summary>
    public abstract string Id { get; }

    /// <summary>What it says, in one sentence.</summary>
    public abstract string Title { get; }

    /// <summary>The gravest finding that it can make.</summary>
    public abstract Severity Worst { get; }

    /// <summary>Whose moves it looks at where there is an ally.</summary>
    public virtual Whose Looks => Whose.Each;

    /// <summary>Memory before the first move; may already judge the opening placements.</summary>
    public virtual object? Begin(Scene scene, FightState open, Tally tally) => null;

    /// <summary>Looks at one step and returns the new memory. Must not change the old one: searches share it.</summary>
    public abstract object? Observe(Scene scene, object? memory, Step step, Tally tally);

    /// <summary>Judges what can only be told at the end.</summary>
    public virtual void Close(Scene scene, object? memory, FightState end, Tally tally)
    {
    }

    /// <summary>A finding of this rule at a step, with the count and the names filled in.</summary>
    protected Finding At(Scene scene, Step step, Severity severity, string message) => new()
    {
        Rule = Id,
        Severity = severity,
        Move = step.Index + 1,
        Count = new HalfCounts(step.Start),
        Who = step.Row.Attacker < 0 ? scene.Brief.Hero.Name : scene.Brief.Attackers[step.Row.Attacker].Name,
        Message = message,
    };

    /// <summary>A finding of this rule about the routine as a whole.</summary>
    protected Finding AtEnd(FightState end, Severity severity, string who, string message) => new()
    {
        Rule = Id,
        Severity = severity,
        Count = new HalfCounts(end.Time),
        Who = who,
        Message = message,
    };
}
