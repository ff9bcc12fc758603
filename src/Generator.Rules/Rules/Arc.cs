using Generator.Domain;
using Generator.Rules.Memories;
using Generator.Rules.Replaying;

namespace Generator.Rules.Rules;

/// <summary>
/// The weight of the moves follows the arc asked for: a point for each step by which a move is heavier than its phase wants, and for each
/// by which a wanted peak falls short.
/// </summary>
public sealed class Arc : Rule
{
    public override string Id => "arc";

    public override string Title => "The weight of the moves follows the arc asked for.";

    public override Severity Worst => Severity.Rough;

    public override Whose Looks => Whose.Hero;

    public override object? Begin(Scene scene, FightState open, Tally tally)
    {
        var shape = ArcShape.Of(scene.Brief);
        return new ArcMemory(shape, new int[shape?.Caps.Count ?? 0]);
    }

    public override object? Observe(Scene scene, object? memory, Step step, Tally tally)
    {
        var was = (ArcMemory)memory!;
        if (was.Shape is not { } shape || step.Technique is not { } technique)
        {
            return was;
        }

        var phase = shape.PhaseOf(step.Start, step.Index);
        var over = technique.Weight - shape.Caps[phase];
        if (over > 0 && tally.Count(Severity.Rough, over))
        {
            tally.Tell(At(scene, step, Severity.Rough, $"{Words.Cap(technique.Name)} (weight {technique.Weight}) is too heavy this early in the arc; {shape.Caps[phase]} is the most here.") with
            {
                Points = over,
                Measured = technique.Weight,
                Allowed = shape.Caps[phase],
                Unit = "weight",
                Advice = "Choose a lighter technique here and keep this one for a peak.",
            });
        }

        if (technique.Weight <= was.Heaviest[phase])
        {
            return was;
        }

        var heaviest = was.Heaviest.ToArray();
        heaviest[phase] = technique.Weight;
        return was with { Heaviest = heaviest };
    }

    public override void Close(Scene scene, object? memory, FightState end, Tally tally)
    {
        var (shape, heaviest) = (ArcMemory)memory!;
        foreach (var peak in shape?.Peaks ?? [])
        {
            var reached = peak.Max(phase => heaviest[phase]);
            var missing = ArcShape.PeakFrom - reached;
            if (missing > 0 && tally.Count(Severity.Rough, missing))
            {
                tally.Tell(AtEnd(end, Severity.Rough, scene.Brief.Hero.Name, $"The arc wants a peak in {PartOf(peak, heaviest.Count)}; the heaviest move there has weight {reached}.") with
                {
                    Points = missing,
                    Measured = reached,
                    Allowed = ArcShape.PeakFrom,
                    Unit = "weight",
                    Advice = $"Put a technique of weight {ArcShape.PeakFrom} or more there.",
                });
            }
        }
    }

    private static string PartOf(IReadOnlyList<int> peak, int phases) =>
        $"{Words.Join([.. peak.Select(p => $"part {p + 1}")], "or")} of {phases}";
}
