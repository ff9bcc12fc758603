using Generator.Domain;
using Generator.Solver.Filling;

namespace Generator.Solver.Rules;

/// <summary>A point for each non-contact hit that reads to no camera.</summary>
public sealed class Sightline : RuleModule
{
    public override string Id => "sightline";

    public override void Post(MoveModel model)
    {
        if (model.Scene.Brief.Cameras.Count == 0)
        {
            return;
        }

        var rows = Rows(model.Scene.Brief.Cameras).ToList();
        foreach (var slot in model.Slots)
        {
            var sells = model.Cp.ClassOf(slot.Uses, [.. model.Vocabulary.Uses.Select(Class)], $"sells[{slot.Index}]");
            var unread = model.Cp.Bool($"unread[{slot.Index}]");
            model.Cp.Table([sells, slot.TargetBearing, unread], rows);
            model.Charge(Id, model.Unanswered(slot, unread, $"misses[{slot.Index}]"));
        }
    }

    private static int Class(Use use) =>
        use.HasTarget && use.Technique is { IsHit: true, Kind: ContactKind.NonContact } technique ? (int)technique.Sells : (int)Sells.Any;

    private static IEnumerable<long[]> Rows(IReadOnlyList<Camera> cameras)
    {
        for (var b = 0; b < Bearing.Circle; b++)
        {
            foreach (var sells in Enum.GetValues<Sells>())
            {
                var reads = cameras.Any(c => Reads(sells, c.Bearing.Apart(new Bearing(b))));
                yield return [(int)sells, b, reads ? 0 : 1];
            }
        }
    }

    private static bool Reads(Sells sells, int apart)
    {
        var offLine = Math.Min(apart, (Bearing.Circle / 2) - apart);
        return sells switch { Sells.Along => offLine <= 1, Sells.Across => offLine <= 4, _ => true };
    }
}
