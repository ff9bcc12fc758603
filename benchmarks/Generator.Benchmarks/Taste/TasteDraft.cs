using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Replaying;
using Generator.Rules.Shapes;

namespace Generator.Benchmarks.Taste;

/// <summary>One draft of one brief, read as a fight.</summary>
/// <param name="Brief">Number of the brief, from 1.</param>
/// <param name="Seed">The seed.</param>
/// <param name="Points">What the audit counts.</param>
/// <param name="Routine">The draft.</param>
/// <param name="Shape">Its measures.</param>
internal sealed record TasteDraft(int Brief, int Seed, int Points, Routine Routine, FightShape Shape)
{
    public Scene Scene => Shape.Scene;

    public IReadOnlyList<Step> Steps => Shape.Steps;

    public int Cast => Scene.Cast;

    /// <summary>Whether each of <see cref="TasteChecks.All"/> is passed.</summary>
    public IReadOnlyList<bool> Passed => field ??= [.. TasteChecks.All.Select(c => c.Passes(this))];
}
