using Generator.Rules;
using Generator.Solver.Engine;
using Google.OrTools.Sat;

namespace Generator.Solver.Proving;

/// <summary>
/// Looks for a plan of a whole routine (<see cref="RoutinePlan"/>). "Impossible" is never said on the word of one configuration of the solver: a
/// second, which shares neither presolve nor relaxation nor seed with the first, must find the same. A plan knows one mark only, so that of a fight over several nothing is said.
/// </summary>
/// <param name="solve">Solves a model; tests put a liar here.</param>
internal sealed class Prover(Func<CpModel, SearchSettings, CancellationToken, CpAnswer>? solve = null)
{
    /// <summary>Places for moves beyond which a plan is not looked at.</summary>
    public const int MostPlaces = 100;

    /// <summary>The two configurations: one worker each, since several share their findings.</summary>
    public static readonly IReadOnlyList<SearchSettings> Configurations =
    [
        new SearchSettings { Seed = 1, Bare = true, Linear = true, Time = TimeSpan.FromHours(1) },
        new SearchSettings { Seed = 2, Linear = false, Time = TimeSpan.FromHours(1) },
    ];

    private readonly Func<CpModel, SearchSettings, CancellationToken, CpAnswer> solve = solve ?? Solve;

    /// <summary>Looks at every move of the routine. Unknown once stopped.</summary>
    /// <exception cref="DisagreementException">The configurations contradict one another: a fault of the program or of the solver.</exception>
    public Fit Whole(Scene scene, CancellationToken stop)
    {
        if (scene.Brief.Travels)
        {
            return Fit.Unknown;
        }

        var any = new MoveClasses(scene);
        if (any.All.Count == 0)
        {
            return Fit.Impossible;
        }

        var size = PlanSize.Of(scene.Brief, any.All.Min(c => c.Shortest));
        if (size.MostMoves is not { } places || places > MostPlaces)
        {
            return Fit.Unknown;
        }

        return places < Math.Max(1, size.FewestMoves) ? Fit.Impossible : Ask(new RoutinePlan(scene, new MoveClasses(scene, places), size, places).Cp.Model, stop);
    }

    /// <summary>
    /// Looks at the moves that lead up to each hero moment only (<see cref="PlanLayout.RoundMoments"/>), in some hundredths of a second. Possible means as
    /// good as nothing, impossible is impossible.
    /// </summary>
    /// <exception cref="DisagreementException">The configurations contradict one another.</exception>
    public Fit RoundMoments(Scene scene, CancellationToken stop)
    {
        if (scene.Brief.Travels)
        {
            return Fit.Unknown;
        }

        var layout = PlanLayout.RoundMoments(scene.Brief);
        var classes = new MoveClasses(scene, layout.Groups.Sum());
        return classes.All.Count == 0
            ? Fit.Impossible
            : Ask(new RoutinePlan(scene, classes, PlanSize.Of(scene.Brief, classes.All.Min(c => c.Shortest)), layout).Cp.Model, stop);
    }

    /// <summary>What both configurations say of a model.</summary>
    public Fit Ask(CpModel model, CancellationToken stop)
    {
        var first = solve(model, Configurations[0], stop);
        if (first is CpAnswer.Feasible or CpAnswer.Optimal)
        {
            return Fit.Possible;
        }

        if (first != CpAnswer.Infeasible)
        {
            return Fit.Unknown;
        }

        return solve(model, Configurations[1], stop) switch
        {
            CpAnswer.Infeasible => Fit.Impossible,
            CpAnswer.Unknown => Fit.Unknown,
            _ => throw new DisagreementException("One configuration of the solver proves that there is no plan for this brief, and another has one."),
        };
    }

    private static CpAnswer Solve(CpModel model, SearchSettings settings, CancellationToken stop)
    {
        using var session = new CpSession(model);
        return session.Solve(settings, null, stop);
    }
}
