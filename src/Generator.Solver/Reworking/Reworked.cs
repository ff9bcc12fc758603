using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Judging;
using Generator.Rules.Replaying;

namespace Generator.Solver.Reworking;

/// <summary>A routine that was changed, as the audit and a comparison with the old one see it.</summary>
/// <param name="Scene">The brief that it answers.</param>
/// <param name="Old">The old routine in the terms of that brief.</param>
/// <param name="Routine">The new one; nothing in it is unsafe or broken.</param>
/// <param name="Verdict">What the audit says of the new one.</param>
/// <param name="Change">What is different.</param>
public sealed record Reworked(Scene Scene, Routine Old, Routine Routine, Verdict Verdict, RoutineChange Change)
{
    /// <summary>With the stances to which the hero changes in gaps written into the moves.</summary>
    public Reworked WithStances() => this with { Routine = StanceNotes.Written(Scene, Routine) };
}
