using Generator.Domain;

namespace Generator.Outside.Tests;

/// <summary>Ways in and turns against measured walking, sprinting and turning.</summary>
public sealed class WalkTests
{
    /// <summary>Fastest mean time over 5 m in Altmann et al. 2015, timed from a rolling start, in seconds.</summary>
    private const double FiveMetreSprint = 1.09;

    [Fact(DisplayName = "Bohannon 1997 (Age Ageing 26:15): 3 m at a comfortable walk take 2.05 to 2.36 s; a walk of 1.4 m/s agrees within half a count")]
    public void A_walk()
    {
        var (soonest, latest) = (3 / 1.462, 3 / 1.272);
        var walked = Outside.Seconds(Outside.Scene(attacker: a => a with { Speed = 140 }).WalkTime(0, 390));

        Assert.InRange(walked, soonest, latest + 0.3);
    }

    [Fact(DisplayName = "Bohannon 1997 (Age Ageing 26:15): the default speed is a brisk walk, above comfort (1.46 m/s) and below the fastest walk (2.53 m/s)")]
    public void The_default_speed_is_a_brisk_walk() => Assert.InRange(new AttackerPart { Name = "Bruno" }.Speed, 147, 253);

    [Fact(DisplayName = "Altmann et al. 2015 (J Strength Cond Res 29:2361): at the trade's speeds, up to a rush of 4.5 m/s, nobody covers 5 m sooner than a sprint, 1.09 s")]
    public void Nobody_outruns_a_sprint()
    {
        for (var speed = 50; speed <= 450; speed += 25)
        {
            foreach (var tempo in new[] { 40, 100, 126, 200 })
            {
                var scene = Outside.Scene(attacker: a => a with { Speed = speed }, tempo: tempo);
                Assert.True(Outside.Seconds(scene.WalkTime(0, 590), tempo) >= FiveMetreSprint, $"{speed} cm/s at {tempo}");
            }
        }
    }

    [Theory(DisplayName = "Furusawa, Hill and Parkinson 1927 (model; parameters illustrative): from rest, a rush of 3 m/s is slower than a sprint over 5 m and over 10 m")]
    [InlineData(500, 1.544)]
    [InlineData(1000, 2.405)]
    public void A_rush_is_slower_than_a_sprint_from_rest(int way, double sprint)
    {
        Assert.Equal(sprint, Sprint(way / 100.0), 3);
        Assert.True(Outside.Seconds(Outside.Scene(attacker: a => a with { Speed = 300 }).WalkTime(0, way + 90)) >= sprint);
    }

    [Fact(DisplayName = "Furusawa, Hill and Parkinson 1927 (model): the time of a way in grows with the distance and never falls below distance / speed")]
    public void Time_grows_with_distance()
    {
        var scene = Outside.Scene(attacker: a => a with { Speed = 300 });
        for (var distance = 91; distance <= 1200; distance++)
        {
            Assert.True(scene.WalkTime(0, distance) >= scene.WalkTime(0, distance - 1));
            Assert.True(Outside.Seconds(scene.WalkTime(0, distance)) >= (distance - 90) / 300.0);
        }
    }

    [Fact(DisplayName = "Mulas et al. 2020 (Aging Clin Exp Res): over-65s turn half round in 2.2 s; a gap allows it in less than that, but not in less than a trained pivot of 0.6 s (common practice)")]
    public void Half_a_turn()
    {
        var settle = Outside.Book.Settle;
        var gap = Enumerable.Range(0, 20).First(g => settle.TurnFor(g) >= 12);

        Assert.InRange(Outside.Seconds(gap), 0.6, 2.2);
    }

    [Fact(DisplayName = "Khobkhun, Hollands and Richards 2021 (Sensors 21:2827; time from memory): a fast paced half turn takes 1.5 s; no gap asks for turning more than twice as fast (common practice), nor allows less than a shorter gap")]
    public void Turning_takes_time()
    {
        const double PacedHalfTurn = 1.5;
        var allowed = Enumerable.Range(0, 10).Select(Outside.Book.Settle.TurnFor).ToList();

        Assert.Equal(allowed.Order(), allowed);

        // Without a gap the turn is part of the technique, and short beside the shortest of them.
        var shortest = (double)Outside.Book.Techniques.Min(t => t.FewestSeconds);
        Assert.True(shortest >= 2 * (allowed[0] / 12.0 * PacedHalfTurn / 2));
        Assert.Contains(12, allowed);
        for (var gap = 1; gap < allowed.Count; gap++)
        {
            Assert.True(Outside.Seconds(gap) >= allowed[gap] / 12.0 * PacedHalfTurn / 2, $"{allowed[gap]} half hours in a gap of {gap}");
        }
    }

    /// <summary>Seconds to cover a way from rest: x(t) = v (t - τ (1 - exp(-t/τ))) with v = 7 m/s and τ = 1.1 s, solved for t by halving.</summary>
    private static double Sprint(double metres)
    {
        var (low, high) = (0.0, 10.0);
        for (var i = 0; i < 60; i++)
        {
            var t = (low + high) / 2;
            (low, high) = 7 * (t - (1.1 * (1 - Math.Exp(-t / 1.1)))) < metres ? (t, high) : (low, t);
        }

        return low;
    }
}
