using Generator.Domain;

namespace Generator.Outside.Tests;

/// <summary>
/// The fewest seconds of strikes and kicks against measured times of trained athletes at full effort, divided by 0.75: performance
/// stays at about three quarters of real speed (fight-call guides for school theatre).
/// </summary>
public sealed class StrikeTimeTests
{
    private const decimal PerformanceShare = 0.75m;

    private static readonly string[] StraightPunches = ["jab", "cross", "step-punch", "palm-heel", "body-punch", "hold-and-punch"];

    [Fact(DisplayName = "VencesBrito et al. 2011 (J Electromyogr Kinesiol): a straight punch takes 0.40 s, performed 0.53 s or more")]
    public void Straight_punches()
    {
        const decimal Least = 0.40m / PerformanceShare;

        Assert.All(Outside.Techniques(StraightPunches), t => Assert.True(t.FewestSeconds >= Least, t.Id));
        Assert.All(Outside.Attacks("jab", "cross", "body-punch"), a => Assert.True(a.FewestSeconds >= Least, a.Id));
    }

    [Fact(DisplayName = "VencesBrito et al. 2011: even at full speed no hand strike is under 0.25 s, so no record of the library asks for less than 0.33 s")]
    public void Nothing_is_faster_than_a_punch_can_be()
    {
        var hits = Outside.Book.Techniques.Where(t => t.Family is Family.Strike or Family.Kick or Family.Finish).ToList();

        Assert.True(hits.Count >= 80);
        Assert.All(hits, t => Assert.True(t.FewestSeconds >= 0.25m / PerformanceShare, t.Id));
        Assert.All(Outside.Book.Attacks, a => Assert.True(a.FewestSeconds >= 0.25m / PerformanceShare, a.Id));
    }

    [Fact(DisplayName = "Wąsik et al. 2022 (J Men's Health 18(6):138): a turning kick takes 0.45 s, performed 0.60 s or more")]
    public void Round_kicks()
    {
        var kicks = Outside.Book.Techniques.Where(t => t.BaseId.Contains("round-kick", StringComparison.Ordinal)).ToList();
        var attacks = Outside.Book.Attacks.Where(a => a.BaseId.StartsWith("round-kick", StringComparison.Ordinal)).ToList();

        Assert.True(kicks.Count >= 8 && attacks.Count >= 6);
        Assert.All(kicks, t => Assert.True(t.FewestSeconds >= 0.45m / PerformanceShare, t.Id));
        Assert.All(attacks, a => Assert.True(a.FewestSeconds >= 0.45m / PerformanceShare, a.Id));
    }

    [Fact(DisplayName = "Wąsik and Góra 2016 (Balt J Health Phys Act 8(4); three athletes): a back kick takes 0.77 s, performed 1.03 s or more, longer than a turning kick")]
    public void Back_kicks()
    {
        var round = Outside.Techniques("mid-round-kick", "low-round-kick").Max(t => t.FewestSeconds);

        Assert.All(Outside.Techniques("back-kick", "spinning-back-kick"), t => Assert.True(t.FewestSeconds >= Math.Round(0.77m / PerformanceShare, 3), t.Id));
        Assert.All(Outside.Techniques("back-kick", "spinning-back-kick"), t => Assert.True(t.FewestSeconds > round, t.Id));
    }

    [Fact(DisplayName = "Piorkowski, Lees and Barton 2011 (Sports Biomech): jab and cross are delivered sooner than hooks")]
    public void Straights_before_hooks()
    {
        var straight = Outside.Techniques("jab", "cross").Max(t => t.FewestSeconds);
        var hooks = Outside.Techniques("hook", "body-hook", "swing").Min(t => t.FewestSeconds);

        Assert.True(straight < hooks);
        Assert.True(Outside.Attacks("jab", "cross").Max(a => a.FewestSeconds) < Outside.Attacks("swing").Min(a => a.FewestSeconds));
    }

    [Fact(DisplayName = "Estevan et al. 2013 (Sports Biomech, doi 10.1080/14763141.2013.776626): a farther target takes a longer kick, so the head kick is not quicker than the low one")]
    public void Higher_round_kicks_take_longer()
    {
        decimal[] seconds = [.. new[] { "low-round-kick", "mid-round-kick", "high-round-kick" }.Select(id => Outside.Techniques(id)[0].FewestSeconds)];

        Assert.Equal(seconds.Order(), seconds);
        Assert.True(seconds[0] < seconds[2]);
    }

    [Fact(DisplayName = "Fight-call guides for school theatre: at the default tempo every record has the time it needs")]
    public void Default_tempo_is_performable()
    {
        Assert.All(Outside.Book.Techniques, t => Assert.True(Tempo.Default.SecondsIn(t.Length) >= t.FewestSeconds, t.Id));
        Assert.All(Outside.Book.Attacks, a => Assert.True(Tempo.Default.SecondsIn(a.Length) >= a.FewestSeconds, a.Id));
    }
}
