using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Replaying;
using Generator.Solver.Engine;
using Generator.Solver.Staging;
using Google.OrTools.Sat;
using RuleModules = Generator.Solver.Rules.RuleModules;

namespace Generator.Outside.Tests;

/// <summary>
/// Orders of arrival against textbook results of one-machine scheduling: an attacker to be met is a job, the threat time its due date.
/// The solver is used through our adapter; orders are recounted by hand or by trying them all.
/// </summary>
public sealed class OrderTests
{
    private static readonly Job[] Five = [new("A", 5, 10), new("B", 10, 15), new("C", 2, 5), new("D", 8, 12), new("E", 6, 8)];

    private static readonly Job[] Released = [new("1", 4, 8), new("2", 2, 12, 1), new("3", 6, 11, 3), new("4", 5, 10, 5)];

    [Fact(DisplayName = "Jackson 1955 (answer computed): earliest due date first gives the least greatest lateness, 16, of all 120 orders")]
    public void Earliest_due_date()
    {
        var (lateness, order) = new OneMachine(Five).LeastLateness();

        Assert.Equal(16, lateness);
        Assert.Equal(16, OneMachine.LatenessOf(Five, order));
        Assert.Equal(16, OneMachine.LatenessOf(Five, "CEADB"));
        Assert.Equal(16, OneMachine.Orders("ABCDE").Min(o => OneMachine.LatenessOf(Five, o)));
    }

    [Fact(DisplayName = "Moore 1968 (Mgmt Sci 15:102; answer computed): of the five jobs at least three are late")]
    public void Three_of_five_late() => Assert.Equal(3, new OneMachine(Five).FewestLate());

    [Fact(DisplayName = "Moore 1968 (Mgmt Sci 15:102; answers computed): of ten jobs two are late at least; in order of due dates it would be four")]
    public void Two_of_ten_late()
    {
        int[] work = [19, 23, 5, 31, 17, 8, 32, 41, 26, 18];
        int[] due = [48, 75, 170, 215, 205, 240, 85, 67, 100, 95];
        var jobs = work.Select((w, i) => new Job(((char)('A' + i)).ToString(), w, due[i])).ToList();
        var (time, late) = (0, 0);
        foreach (var job in jobs.OrderBy(j => j.Due))
        {
            time += job.Work;
            late += time > job.Due ? 1 : 0;
        }

        Assert.Equal(4, late);
        Assert.Equal(59, new OneMachine(jobs).LeastLateness().Lateness);
        Assert.Equal(2, new OneMachine(jobs).FewestLate());
    }

    [Fact(DisplayName = "Pinedo, Scheduling, ch. 3 (instance from memory, answer computed): of five jobs two are late at least")]
    public void Two_of_five_late() =>
        Assert.Equal(2, new OneMachine([new("1", 7, 9), new("2", 8, 17), new("3", 4, 18), new("4", 6, 19), new("5", 6, 21)]).FewestLate());

    [Fact(DisplayName = "Pinedo, Scheduling (branch-and-bound example): with release dates the least greatest lateness is 5, only in the order 1, 3, 4, 2")]
    public void Release_dates()
    {
        Assert.Equal((5, "1342"), new OneMachine(Released).LeastLateness());
        Assert.Equal(["1342"], OneMachine.Orders("1234").Where(o => OneMachine.LatenessOf(Released, o) <= 5));
        Assert.Equal(6, OneMachine.LatenessOf(Released, "1432"));
        Assert.Equal(6, OneMachine.LatenessOf(Released, "1243"));
    }

    [Fact(DisplayName = "Horn 1974 (citation from memory): with interruptions allowed, earliest due date first bounds the same example by 5")]
    public void Interrupted_bound()
    {
        var left = Released.ToDictionary(j => j.Name, j => j.Work, StringComparer.Ordinal);
        var latest = int.MinValue;
        for (var time = 0; left.Values.Any(w => w > 0); time++)
        {
            if (Released.Where(j => j.Release <= time && left[j.Name] > 0).MinBy(j => j.Due) is { } job && --left[job.Name] == 0)
            {
                latest = Math.Max(latest, time + 1 - job.Due);
            }
        }

        Assert.Equal(5, latest);
    }

    [Fact(DisplayName = "Constructed: taking whoever is ready at once can be wrong; waiting one unit brings the greatest lateness from 9 to 0")]
    public void Waiting_can_be_better()
    {
        Job[] jobs = [new("1", 10, 100), new("2", 1, 2, 1)];

        Assert.Equal(9, OneMachine.LatenessOf(jobs, "12"));
        Assert.Equal((0, "21"), new OneMachine(jobs).LeastLateness());
    }

    [Fact(DisplayName = "Jackson 1955: staging meets attackers in the order of their threat times, which is the order of due dates, and in no other")]
    public void Staging_meets_attackers_in_due_order()
    {
        var (scene, state) = Arrivals();
        var plan = new StagingModel(RuleModules.OfPlans, scene, state, new int[5], 5, false);
        foreach (var exchange in plan.Exchanges)
        {
            plan.Cp.Model.Add(exchange.Used == 1);
            plan.Cp.Model.Add(exchange.PutsOut == 1);
            plan.Cp.Model.Add(exchange.Moves == 2);
        }

        using var session = new CpSession(plan.Cp.Model);
        Assert.Equal(CpAnswer.Optimal, session.Solve(new SearchSettings { Time = TimeSpan.FromMinutes(20) }));
        int[] order = [.. plan.Exchanges.Select(e => Array.FindIndex(e.By, session.IsTrue))];

        Assert.Equal("CEADB", string.Concat(order.Select(a => Five[a].Name)));

        plan.Cp.Model.AddBoolOr(plan.Exchanges.Select((e, i) => e.By[order[i]].Not()));
        using var other = new CpSession(plan.Cp.Model);
        Assert.Equal(CpAnswer.Infeasible, other.Solve(new SearchSettings { Time = TimeSpan.FromMinutes(20) }));
    }

    /// <summary>Five attackers round the hero whose threat times are twice the due dates, 4 half counts apart and more, so beyond the tolerance.</summary>
    private static (Scene Scene, FightState State) Arrivals()
    {
        var brief = new Brief
        {
            Length = new Domain.Length(60, null, 4),
            Hero = new HeroPart { Name = "Ines", Skill = Skill.Stunt },
            Attackers = [.. Five.Select(j => new AttackerPart { Name = j.Name, Speed = 100, Skill = Skill.Stunt })],
        };
        var scene = new Scene(brief, Outside.Book);

        // From 1.20 m the 30 cm to striking distance take 0.3 s, one half count.
        var state = Replay.Open(scene, [.. Five.Select((j, i) => new Placement(new Bearing(i * 5), new Centimetres(120), new HalfCounts((2 * j.Due) - 1)))]);
        Assert.Equal(Five.Select(j => 2 * j.Due), Enumerable.Range(0, 5).Select(a => Replay.ThreatTime(scene, state, a)));
        return (scene, state);
    }
}
