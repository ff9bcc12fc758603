using Generator.Solver.Engine;
using Google.OrTools.Sat;

namespace Generator.Outside.Tests;

/// <summary>The textbook problem of one machine, put to CP-SAT through our adapter: each of two jobs is done before the other.</summary>
internal sealed class OneMachine
{
    private readonly Cp cp = new();
    private readonly IReadOnlyList<Job> jobs;
    private readonly IntVar[] starts;

    public OneMachine(IReadOnlyList<Job> jobs)
    {
        this.jobs = jobs;
        var horizon = jobs.Max(j => j.Release) + jobs.Sum(j => j.Work);
        starts = [.. jobs.Select(j => cp.Int(j.Release, horizon, j.Name))];
        for (var first = 0; first < jobs.Count; first++)
        {
            for (var second = first + 1; second < jobs.Count; second++)
            {
                var before = cp.Bool($"{jobs[first].Name}<{jobs[second].Name}");
                cp.Model.Add(starts[first] + jobs[first].Work <= starts[second]).OnlyEnforceIf(before);
                cp.Model.Add(starts[second] + jobs[second].Work <= starts[first]).OnlyEnforceIf(before.Not());
            }
        }
    }

    /// <summary>The least greatest lateness (end less due date), proven, and an order that has it.</summary>
    public (long Lateness, string Order) LeastLateness()
    {
        var latest = cp.Model.NewIntVar(-10000, 10000, "latest");
        for (var i = 0; i < jobs.Count; i++)
        {
            cp.Model.Add(latest >= starts[i] + (jobs[i].Work - jobs[i].Due));
        }

        cp.Model.Minimize(latest);
        using var session = Solved();
        var order = string.Concat(Enumerable.Range(0, jobs.Count).OrderBy(i => session.Value(starts[i])).Select(i => jobs[i].Name));
        return (session.Objective, order);
    }

    /// <summary>The fewest jobs that end after their due date, proven.</summary>
    public long FewestLate()
    {
        var late = cp.Bools(jobs.Count, "late");
        for (var i = 0; i < jobs.Count; i++)
        {
            cp.Model.Add(starts[i] + jobs[i].Work <= jobs[i].Due).OnlyEnforceIf(late[i].Not());
        }

        cp.Model.Minimize(Cp.Sum(late));
        using var session = Solved();
        return session.Objective;
    }

    /// <summary>Greatest lateness of the jobs in an order given by their names of one letter, each started as soon as it may.</summary>
    public static int LatenessOf(IReadOnlyList<Job> jobs, string order)
    {
        var (time, latest) = (0, int.MinValue);
        foreach (var job in order.Select(name => jobs.Single(j => j.Name[0] == name)))
        {
            time = Math.Max(time, job.Release) + job.Work;
            latest = Math.Max(latest, time - job.Due);
        }

        return latest;
    }

    /// <summary>Every order of some letters.</summary>
    public static IEnumerable<string> Orders(string letters) =>
        letters.Length <= 1 ? [letters] : letters.SelectMany((letter, i) => Orders(letters.Remove(i, 1)).Select(rest => letter + rest));

    private CpSession Solved()
    {
        var session = new CpSession(cp.Model);
        Assert.Equal(CpAnswer.Optimal, session.Solve(new SearchSettings { Time = TimeSpan.FromMinutes(20) }));
        return session;
    }
}
