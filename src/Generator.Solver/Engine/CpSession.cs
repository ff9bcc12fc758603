using System.Diagnostics;
using Google.OrTools.Sat;

namespace Generator.Solver.Engine;

/// <summary>
/// The only owner of the solver. Formats parameters, keeps asking the token while the solver runs (a stop before the start would be lost),
/// catches whatever a callback throws and throws it afterwards, and gives values only when there is a solution. What would be too much to post
/// beforehand is posted lazily: an answer may be refuted, which adds to the model what it breaks, and the model is solved again.
/// </summary>
public sealed class CpSession : IDisposable
{
    private readonly CpModel model;
    private readonly Func<Func<IntVar, long>, bool>? refute;
    private CpSolver? solver;

    /// <param name="model">What is solved.</param>
    /// <param name="refute">
    /// Looks at the values of an answer; where they break what has not been posted yet, posts enough of it to rule this answer out, and is true. Null when the model says all.
    /// </param>
    public CpSession(CpModel model, Func<Func<IntVar, long>, bool>? refute = null) => (this.model, this.refute) = (model, refute);

    public CpAnswer Answer { get; private set; } = CpAnswer.Unknown;

    /// <summary>Objective of the solution; 0 without objective or solution.</summary>
    public long Objective { get; private set; }

    /// <summary>No solution can have a smaller objective.</summary>
    public long Bound { get; private set; }

    public TimeSpan Elapsed { get; private set; }

    /// <summary>Deterministic work done, in the unit of <see cref="SearchSettings.Work"/>.</summary>
    public double Work { get; private set; }

    /// <summary>How many answers were refuted on the way to the last one.</summary>
    public int Refuted { get; private set; }

    /// <summary>
    /// Solves the model until an answer is not refuted. Each model on the way says less than the whole, so no solution, and no better one, of it means none of the
    /// whole. All solves together keep to the limits; a last answer that was refuted counts as none.
    /// </summary>
    /// <param name="settings">Parameters.</param>
    /// <param name="onSolution">Called with a reader of values at every better solution; must return fast. It also hears of those that are refuted later.</param>
    /// <param name="stop">Stops the solver within some hundredths of a second.</param>
    /// <exception cref="InvalidOperationException">The model itself is wrong; the message says where.</exception>
    public CpAnswer Solve(SearchSettings settings, Action<Func<IntVar, long>, long>? onSolution = null, CancellationToken stop = default)
    {
        (Refuted, Work, Elapsed) = (0, 0, TimeSpan.Zero);
        var limits = settings;
        while (true)
        {
            var answer = Once(limits, onSolution, stop);
            if (HasSolution && refute?.Invoke(Value) == true)
            {
                Refuted++;
            }
            else if (answer == CpAnswer.Infeasible && limits.Bare)
            {
                // Without presolve the solver has called a model infeasible of which it finds a solution with it; so a no is asked for twice.
                limits = limits with { Bare = false };
            }
            else
            {
                return answer;
            }

            limits = limits with { Time = settings.Time - Elapsed, Work = settings.Work - Work };
            if (limits.Time <= TimeSpan.Zero || limits.Work <= 0)
            {
                return Answer = CpAnswer.Unknown;
            }
        }
    }

    private CpAnswer Once(SearchSettings settings, Action<Func<IntVar, long>, long>? onSolution, CancellationToken stop)
    {
        if (stop.IsCancellationRequested)
        {
            return Answer = CpAnswer.Unknown;
        }

        var clock = Stopwatch.StartNew();
        solver?.Dispose();
        solver = new CpSolver { StringParameters = settings.ToParameters() };
        using var callback = new Listener(onSolution, stop);
        CpSolverStatus status;
        using (new Stopper(StopSearch, stop))
        {
            status = solver.Solve(model, callback);
        }

        Elapsed += clock.Elapsed;
        Work += solver.Response?.DeterministicTime ?? 0;
        callback.Rethrow();
        Answer = status switch
        {
            CpSolverStatus.Optimal => CpAnswer.Optimal,
            CpSolverStatus.Feasible => CpAnswer.Feasible,
            CpSolverStatus.Infeasible => CpAnswer.Infeasible,
            CpSolverStatus.Unknown => CpAnswer.Unknown,
            _ => throw new InvalidOperationException("The solver rejects its model: " + model.Validate() + " " + solver.SolutionInfo()),
        };
        if (HasSolution)
        {
            Objective = (long)Math.Round(solver.ObjectiveValue);
            Bound = (long)Math.Ceiling(solver.BestObjectiveBound - 1e-6);
        }

        return Answer;
    }

    public bool HasSolution => Answer is CpAnswer.Feasible or CpAnswer.Optimal;

    /// <summary>Value of a variable in the solution.</summary>
    /// <exception cref="InvalidOperationException">There is no solution.</exception>
    public long Value(IntVar variable) => HasSolution ? solver!.Value(variable) : throw new InvalidOperationException("There is no solution to read.");

    /// <summary>Value of an expression in the solution.</summary>
    /// <exception cref="InvalidOperationException">There is no solution.</exception>
    public long Value(LinearExpr expression) => HasSolution ? solver!.Value(expression) : throw new InvalidOperationException("There is no solution to read.");

    public bool IsTrue(BoolVar literal) => Value((IntVar)literal) == 1;

    public void Dispose() => solver?.Dispose();

    private void StopSearch()
    {
        try
        {
            solver?.StopSearch();
        }
        catch (Exception e) when (e is NullReferenceException or ObjectDisposedException or ApplicationException)
        {
            // The solver is just starting or just ending; the next request comes soon.
            return;
        }
    }

    private sealed class Listener(Action<Func<IntVar, long>, long>? onSolution, CancellationToken stop) : CpSolverSolutionCallback
    {
        private Exception? failure;

        public override void OnSolutionCallback()
        {
            try
            {
                onSolution?.Invoke(Value, (long)Math.Round(ObjectiveValue()));
                if (stop.IsCancellationRequested)
                {
                    StopSearch();
                }
            }
#pragma warning disable CA1031 // an exception that leaves a callback ends the process
            catch (Exception e)
#pragma warning restore CA1031
            {
                failure = e;
                StopSearch();
            }
        }

        public void Rethrow()
        {
            if (failure is not null)
            {
                throw new InvalidOperationException("A solution could not be taken over: " + failure.Message, failure);
            }
        }
    }
}
