using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Replaying;
using Generator.Rules.Rules;
using Generator.Solver.Engine;
using Generator.Solver.Proving;

namespace Generator.Solver.Tests.Proving;

/// <summary>Fixes a routine in the plan of a proof, move by move, and asks whether it fits.</summary>
internal static class PlanPin
{
    /// <summary>What the solver says of the plan with this routine in it.</summary>
    public static CpAnswer Of(Scene scene, Routine routine, SearchSettings settings)
    {
        var steps = Replay.Of(scene, routine);
        var classes = new MoveClasses(scene);
        var size = PlanSize.Of(scene.Brief, classes.All.Min(c => c.Shortest));
        Assert.True(size.MostMoves is null || size.MostMoves >= steps.Count, "a routine with more moves than the plan has places");
        var plan = new RoutinePlan(scene, classes, size, size.MostMoves ?? steps.Count);
        foreach (var step in steps)
        {
            Fix(plan, step);
        }

        if (steps.Count < plan.Slots.Count)
        {
            plan.Cp.Model.Add(plan.Slots[steps.Count].Used == 0);
        }

        using var session = new CpSession(plan.Cp.Model);
        return session.Solve(settings);
    }

    private static void Fix(RoutinePlan plan, Step step)
    {
        var (slot, model) = (plan.Slots[step.Index], plan.Cp.Model);
        model.Add(slot.Start == step.Start);
        model.Add(slot.End == step.End);
        model.AddBoolOr([.. slot.Is.Where((_, c) => IsOf(plan, plan.Seen[c].Traits, step))]);
        for (var a = 0; a < plan.Scene.Cast; a++)
        {
            if (slot.Second[a] is { } second)
            {
                model.Add(second == (step.Second == a ? 1 : 0));
            }
            else
            {
                Assert.NotEqual(a, step.Second);
            }
        }
    }

    private static bool IsOf(RoutinePlan plan, MoveTraits traits, Step step)
    {
        var technique = step.Technique!;
        var target = step.HasTarget ? step.Row.Attacker : -1;
        Posture? to = target >= 0 && step.Reaction is not null ? step.After.Attackers[target].Posture : null;
        var role = step.Second < 0 ? SecondRole.None : technique.TakesTwo ? SecondRole.Taken : SecondRole.Bumped;
        var told = plan.Classes.ToldApart(new MoveTraits
        {
            Attacker = target,
            Setback = technique.Family == Family.Setback,
            Pause = technique.IsStoryPause,
            HeroFalls = technique.HeroFall != FallClass.None,
            HeroHeadHit = Exposure.HitsHeroHead(technique, step.Attack),
            Falls = step.Reaction is { Fall: not FallClass.None },
            HeadHit = step is { HasTarget: true, Technique.IsHeadHit: true, IsAnswered: false },
            Second = role,
            Wanted = plan.Classes.WantedBits(step.Row with { Attacker = target }),
        });
        return By(traits.By, step) && traits.To == to && traits == told with { By = traits.By, To = traits.To, Finishes = traits.Finishes, AbleSeconds = traits.AbleSeconds, SecondFrom = traits.SecondFrom };
    }

    private static bool By(ComesBy by, Step step) => step switch
    {
        { HasTarget: false } => by == ComesBy.Nobody,
        { Attack: not null } => by == ComesBy.Attack,
        _ => by is ComesBy.Opening or ComesBy.Recovery,
    };
}
