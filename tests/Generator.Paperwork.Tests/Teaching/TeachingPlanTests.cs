using System.Globalization;
using System.Text.RegularExpressions;
using Generator.Domain;
using Generator.Paperwork.Teaching;
using Generator.Testing;
using Load = Generator.Paperwork.Teaching.Load;

namespace Generator.Paperwork.Tests.Teaching;

public class TeachingPlanTests
{
    private static readonly IReadOnlyList<Phrase> Phrases = PhraseCut.Of(Ferry.Steps);

    private static readonly TeachingPlan Plan = TeachingPlan.Of(Ferry.Scene, Ferry.Steps, Phrases);

    [Fact]
    public void The_plan_of_the_ferry() => Golden.Matches("teaching-plan", TeachingSheet.Of(Ferry.Scene, Ferry.Steps, Plan, null));

    [Fact]
    public void The_plan_with_dates_over_the_turn_of_the_year() => Golden.Matches("teaching-plan-dates", TeachingSheet.Of(Ferry.Scene, Ferry.Steps, Plan, new DateOnly(2026, 12, 30)));

    [Fact]
    public void A_routine_without_moves_has_no_days() => Assert.Empty(TeachingPlan.Of(Ferry.Scene, [], []).Days);

    [Fact]
    public void Every_phrase_climbs_the_whole_ladder_in_order()
    {
        foreach (var phrase in Phrases)
        {
            var rungs = Plan.Days.SelectMany(d => d.Drills).Where(d => d.What.StartsWith("phrase ", StringComparison.Ordinal) && d.First == phrase.First).Select(d => d.Speed);
            Assert.Equal(Speed.Ladder, rungs);
        }
    }

    /// <summary>The minutes of a day are its lines, read with the seconds that the sheet itself gives for each speed.</summary>
    [Fact]
    public void The_minutes_of_a_day_are_those_of_its_lines()
    {
        var lines = TeachingSheet.Of(Ferry.Scene, Ferry.Steps, Plan, null).Split('\n');
        var seconds = lines.Select(l => Regex.Match(l, @"^  (phrase \d+|the whole) +([\d.]+) +([\d.]+) +([\d.]+) +([\d.]+)$")).Where(m => m.Success).ToDictionary(m => m.Groups[1].Value, m => Enumerable.Range(2, 4).Select(g => double.Parse(m.Groups[g].Value, CultureInfo.InvariantCulture)).ToList());
        var days = lines.Select((l, i) => (Day: Regex.Match(l, @"^Day \d+ .*, (\d+) min in motion$"), At: i)).Where(d => d.Day.Success).ToList();
        Assert.Equal(Plan.Days.Count, days.Count);
        var read = 0;
        foreach (var (day, at) in days)
        {
            var drills = lines.Skip(at + 1).TakeWhile(l => l.Length > 0).Select(l => Regex.Match(l, @"^  (.+?) +(quarter|half|three-quarter|performance) speed .* (\d+) times?$")).Where(m => m.Success).ToList();
            if (drills.TrueForAll(d => seconds.ContainsKey(d.Groups[1].Value)))
            {
                var sum = drills.Sum(d => seconds[d.Groups[1].Value][Speed.Ladder.Select(s => s.ToString()).ToList().IndexOf(d.Groups[2].Value)] * int.Parse(d.Groups[3].Value, CultureInfo.InvariantCulture));
                Assert.Equal((int)Math.Ceiling(sum / 60), int.Parse(day.Groups[1].Value, CultureInfo.InvariantCulture));
                read++;
            }
        }

        Assert.True(read >= 3, $"{read}");
    }

    [Fact]
    public void No_day_asks_more_than_anybodys_budget_and_none_could_take_one_repeat_more()
    {
        var heldBack = 0;
        foreach (var runs in new[] { 1, 2, 6, 12 })
        {
            foreach (var falls in new[] { 0, 3, 8, 36 })
            {
                var scene = new Rules.Scene(Ferry.Routine.Brief with { Safety = new Safety(HalfCounts.Zero, runs, falls, 20) }, Ferry.Book);
                var plan = TeachingPlan.Of(scene, Ferry.Steps, Phrases);
                foreach (var day in plan.Days)
                {
                    var used = Sum(scene, day.Drills, d => d.Speed.IsMarked ? 0 : d.Repeats);
                    Assert.All(used.Zip(plan.Budget), p => Assert.True(p.First.FitsIn(p.Second), $"{p.First} of {p.Second}"));
                    foreach (var drill in day.Drills.Where(d => d.Repeats < d.Wanted))
                    {
                        heldBack++;
                        Assert.NotEmpty(drill.HeldBackBy);
                        var more = Sum(scene, day.Drills, d => (d.Speed.IsMarked ? 0 : d.Repeats) + (d == drill ? 1 : 0));
                        Assert.Contains(more.Zip(plan.Budget), p => !p.First.FitsIn(p.Second));
                    }
                }
            }
        }

        Assert.True(heldBack > 20, $"{heldBack}");
    }

    [Fact]
    public void What_a_performer_takes_in_one_run_is_counted_from_the_moves()
    {
        Assert.Equal(Ferry.Steps[^1].After.Attackers.Select(a => a.Falls), Plan.Run.Skip(1).Select(l => l.Falls));
        Assert.Equal(Ferry.Steps.Count(s => s is { HasTarget: true, Technique: { Family: Family.Strike or Family.Kick or Family.Finish, Height: Height.High } }), Plan.Run.Skip(1).Sum(l => l.HeadHits));
        Assert.True(Plan.Run[0].Effort >= Plan.Run.Skip(1).Max(l => l.Effort));
    }

    private static IReadOnlyList<Load> Sum(Rules.Scene scene, IReadOnlyList<Drill> drills, Func<Drill, int> times) =>
        [.. Enumerable.Range(0, scene.Cast + 1).Select(p => drills.Aggregate(default(Load), (sum, d) => sum + (Load.Of(scene, Ferry.Steps.Skip(d.First - 1).Take(d.Last - d.First + 1))[p] * times(d))))];
}
