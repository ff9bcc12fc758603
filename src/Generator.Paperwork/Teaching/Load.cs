using Generator.Domain;
using Generator.Paperwork.Text;
using Generator.Rules;
using Generator.Rules.Replaying;
using Generator.Rules.Rules;

namespace Generator.Paperwork.Teaching;

/// <summary>What a stretch of moves asks of one performer, done once at full speed.</summary>
/// <param name="Falls">Falls taken.</param>
/// <param name="HeadHits">Head-height hits sold.</param>
/// <param name="Effort">Half counts of high effort.</param>
public readonly record struct Load(int Falls, int HeadHits, int Effort)
{
    public static Load operator +(Load left, Load right) => new(left.Falls + right.Falls, left.HeadHits + right.HeadHits, left.Effort + right.Effort);

    public static Load operator *(Load load, int times) => new(load.Falls * times, load.HeadHits * times, load.Effort * times);

    /// <summary>No part is greater than in <paramref name="budget"/>.</summary>
    public bool FitsIn(Load budget) => Falls <= budget.Falls && HeadHits <= budget.HeadHits && Effort <= budget.Effort;

    /// <summary>
    /// The load of some moves on everybody: the hero first, then the attackers in their order, the ally last where there is one. A move of high weight is high effort for the hero and
    /// for whoever it is done to.
    /// </summary>
    public static IReadOnlyList<Load> Of(Scene scene, IEnumerable<Step> steps)
    {
        var loads = new Load[scene.Cast + (scene.Brief.Ally is null ? 1 : 2)];
        foreach (var step in steps)
        {
            if (step.Technique is not { } technique)
            {
                continue;
            }

            var effort = technique.Family == Family.Pause || technique.Weight < Exposure.HeavyFrom ? 0 : technique.Length.Value;
            loads[step.IsByAlly ? ^1 : 0] += new Load(FallsOf(step, -1), Exposure.HitsHeroHead(technique, step.Attack) ? 1 : 0, effort);
            for (var a = 0; a < scene.Cast; a++)
            {
                var isTarget = step.Target == a;
                loads[a + 1] += new Load(FallsOf(step, a), Exposure.HitsHead(step, a) ? 1 : 0, isTarget ? effort : 0);
            }
        }

        return loads;
    }

    /// <summary>
    /// The most that one day may ask of everybody, hero first: the brief's caps on falls and head-height hits, and the high effort of the
    /// planned runs, so that nobody works harder in rehearsal than on a day of runs.
    /// </summary>
    public static IReadOnlyList<Load> BudgetOf(Scene scene, IReadOnlyList<Step> steps)
    {
        var (everybody, safety) = (AllyWords.Everybody(scene.Brief).ToList(), scene.Brief.Safety);
        return [.. Of(scene, steps).Select((run, p) => new Load(FallsOf(everybody[p], safety), safety.HeadHitsPerDay, run.Effort * safety.Runs))];
    }

    private static int FallsOf(Step step, int who) => step.Falls.Count(f => f.Who == who);

    private static int FallsOf(Performer performer, Safety safety) =>
        performer.FallsPerRun is { } perRun ? Math.Min(safety.FallsPerDay, perRun * safety.Runs) : safety.FallsPerDay;
}
