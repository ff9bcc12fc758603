using Generator.Domain;
using Generator.Rules.Bodies;
using Generator.Rules.Replaying;

namespace Generator.Benchmarks.Taste;

/// <summary>What the table needs of holds, ways and orders, counted from the moves and the ways of Replay.</summary>
internal static class TasteTrails
{
    private static readonly string[] Steps = ["step", "leap", "hop", "jump"];

    /// <summary>How often somebody comes to be held.</summary>
    public static int Holds(TasteDraft draft) => draft.Steps.Sum(s => Enumerable.Range(0, draft.Cast).Count(a => !s.Before.Attackers[a].Posture.IsControlled() && s.After.Attackers[a].Posture.IsControlled()));

    public static bool OnOthersWhileHolding(Step step) => step.HasTarget && Enumerable.Range(0, step.Before.Attackers.Count)
        .Any(a => a != step.Row.Attacker && step.Before.Attackers[a].Posture.IsControlled() && step.After.Attackers[a].Posture.IsControlled());

    public static bool StepsWhileHolding(Step step) => OnOthersWhileHolding(step) && step.Technique is { } t && t.BaseId.Split('-').Any(w => Array.IndexOf(Steps, w) >= 0);

    /// <summary>Ways on which somebody comes within half a metre of somebody who lies: the feet of one, the line of the other.</summary>
    public static int PastTheLying(TasteDraft draft)
    {
        var ways = Ways(draft);
        return ways.Sum(w => w.Legs.Count(l => l.Kind is LegKind.Comes or LegKind.Enters
            && ways.Where(o => o.Who != w.Who).SelectMany(o => o.Legs).Any(b => b.Lies && b.From < l.To && b.To > l.From && l.Apart(b) < 50)));
    }

    public static int TooFast(TasteDraft draft) => Ways(draft).Sum(w => w.Legs.Count(l =>
        !l.Lies && !double.IsInfinity(l.From) && l.To > l.From && l.Start.To(l.End) > 20
        && l.Start.To(l.End) / ((l.To - l.From) * 30 / draft.Scene.Brief.Tempo.CountsPerMinute) > 500));

    public static int OpensInTheLens(TasteDraft draft) => draft.Routine.Placements.Count(p => draft.Scene.Brief.Cameras.Any(c =>
        Place.At(p.Bearing.HalfHours, p.Distance.Value).To(Place.At(c.Bearing.HalfHours, c.Distance.Value)) < 100));

    /// <summary>How alike two drafts are in the order of their families, over as many moves as the shorter has: seeds of one brief, and seed 1 of different briefs.</summary>
    public static (double Same, double Other) FamilyOrder(IReadOnlyList<TasteDraft> drafts)
    {
        var same = drafts.GroupBy(d => d.Brief).SelectMany(g => Couples([.. g])).ToList();
        var other = Couples([.. drafts.GroupBy(d => d.Brief).Select(g => g.First())]).ToList();
        return (same.DefaultIfEmpty().Average(), other.DefaultIfEmpty().Average());
    }

    private static IEnumerable<double> Couples(IReadOnlyList<TasteDraft> drafts) =>
        Enumerable.Range(0, drafts.Count).SelectMany(i => Enumerable.Range(i + 1, drafts.Count - i - 1).Select(k => Alike(drafts[i], drafts[k])));

    private static double Alike(TasteDraft one, TasteDraft two)
    {
        var (a, b) = (Families(one), Families(two));
        var least = Math.Min(a.Count, b.Count);
        var (above, row) = (new int[least + 1], new int[least + 1]);
        for (var i = 0; i < least; i++)
        {
            for (var k = 0; k < least; k++)
            {
                row[k + 1] = a[i] == b[k] ? above[k] + 1 : Math.Max(above[k + 1], row[k]);
            }

            (above, row) = (row, above);
        }

        return least == 0 ? 0 : above[least] / (double)least;
    }

    private static List<Family> Families(TasteDraft draft) => [.. draft.Steps.Where(s => s.Technique is not null).Select(s => s.Technique!.Family)];

    private static List<(int Who, List<Leg> Legs)> Ways(TasteDraft draft) =>
        draft.Steps.Count == 0 ? [] : [.. Enumerable.Range(0, draft.Cast).Select(a => (a, draft.Steps[^1].After.Attackers[a].Way.Chain().ToList()))];
}
