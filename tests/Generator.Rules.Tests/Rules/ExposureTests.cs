using Generator.Domain;
using Generator.Rules.Tests.Fights;

namespace Generator.Rules.Tests.Rules;

public sealed class ExposureTests
{
    private const string Fall = "swing-right > outside-block-left {limb-stopped} ; step-punch-right {back-fall}";

    private static Fight Alone(string moves) => Fight.Of("left-lead Bruno@12/250", moves);

    private static string Times(int times, string move) => string.Join(" ; ", Enumerable.Repeat(move, times));

    private static Found Judge(Fight fight) => Verify.Rule("exposure").Given(fight);

    [Fact]
    [Fails("exposure")]
    public void More_falls_than_the_cap() =>
        Judge(Alone(Fall + " ; +20 " + Fall).WithAttacker(0, b => b with { FallsPerRun = 1 })).Finds(1, 4).As(Severity.Unsafe).Measures(2, 1, "falls");

    [Fact]
    [Passes("exposure")]
    public void As_many_as_the_cap() => Judge(Alone(Fall + " ; +20 " + Fall).WithAttacker(0, b => b with { FallsPerRun = 2 })).FindsNothing();

    /// <summary>11 falls a day over 6 planned runs are 1 a run.</summary>
    [Theory]
    [InlineData(11, 1)]
    [InlineData(12, 0)]
    public void The_cap_of_the_day_is_shared_out_over_the_runs(int perDay, int findings) =>
        Judge(Alone(Fall + " ; +20 " + Fall).With(b => b with { Safety = b.Safety with { FallsPerDay = perDay } })).Finds(findings, 4);

    [Fact]
    public void The_heros_falls_count_too() =>
        Judge(Alone("swing-right > knocked-down {presses-on}").WithHero(h => h with { FallsPerRun = 0 })).Finds(1, 1).Concerns("Ines");

    [Theory]
    [InlineData(1, 1)]
    [InlineData(2, 0)]
    public void Head_height_hits_are_capped(int perRun, int findings) =>
        Judge(Alone("swing-right > outside-block-left {limb-stopped} ; cross-right {head-back} ; hook-left {head-turns}").With(b => b with { Safety = b.Safety with { HeadHitsPerDay = perRun * b.Safety.Runs } }))
            .Finds(findings, 3);

    /// <summary>A hook to the jaw hits the head whether the head turns or the one who takes it falls on their side; a body punch does not, even when the head drops.</summary>
    [Theory]
    [InlineData("hook-left {side-fall}", 1)]
    [InlineData("finishing-hook-left {out-crumples}", 1)]
    [InlineData("+20 lapel-grab > palm-stop-right {staggers-back}", 1)]
    [InlineData("body-punch-right {folds}", 0)]
    public void They_are_counted_from_the_hit_and_not_from_how_it_is_sold(string last, int findings) =>
        Judge(Alone("swing-right > outside-block-left {limb-stopped} ; cross-right {head-back} ; " + last).With(b => b with { Safety = b.Safety with { HeadHitsPerDay = b.Safety.Runs } })).Finds(findings, 3);

    /// <summary>Ducked, blocked on the arms or slipped, a blow is sold by nobody.</summary>
    [Theory]
    [InlineData("hook-left {ducks-blow}", 0)]
    [InlineData("cross-right {slips-blow}", 0)]
    [InlineData("jab-left {parries-and-goes-on} ; +1 cross-right {head-back}", 1)]
    public void A_blow_that_is_answered_is_no_hit(string last, int findings) =>
        Judge(Alone("swing-right > outside-block-left {limb-stopped} ; cross-right {rocks-back} ; " + last).With(b => b with { Safety = b.Safety with { HeadHitsPerDay = b.Safety.Runs } })).Finds(findings, 4);

    [Fact]
    public void So_are_those_that_the_hero_sells() =>
        Judge(Alone("swing-right > takes-face-hit {presses-on} ; +4 jab-right > takes-face-hit {presses-on} ; +4 body-punch-right > takes-body-hit {presses-on}")
            .With(b => b with { Safety = b.Safety with { HeadHitsPerDay = b.Safety.Runs } })).Finds(1, 2).Measures(2, 1, "head-height hits").Concerns("Ines");

    /// <summary>A hook lasts a count, 0.6 s, and has weight 3: 16 last 9.6 s, 17 last 10.2 s.</summary>
    [Fact]
    public void Ten_seconds_flat_out_are_noted_once() =>
        Judge(Alone(Times(20, "hook-left")).With(ManyHits)).Finds(1, 17).As(Severity.Note).Measures(10.2m, 10, "s");

    [Theory]
    [InlineData("catch-breath")]
    [InlineData("jab-left")]
    [InlineData("+2 hook-left")]
    public void A_pause_a_light_move_or_a_count_of_nothing_breaks_the_run(string between) =>
        Judge(Alone(Times(16, "hook-left") + " ; " + between + " ; " + Times(15, "hook-left")).With(ManyHits)).FindsNothing();

    [Fact]
    public void Half_a_count_of_nothing_does_not() => Judge(Alone(Times(15, "hook-left") + " ; +1 hook-left ; hook-left").With(ManyHits)).Finds(1, 17);

    private static Brief ManyHits(Brief brief) => brief with { Safety = brief.Safety with { HeadHitsPerDay = 1000 } };
}
