using Generator.Domain;
using Generator.Rules;

namespace Generator.Outside.Tests;

/// <summary>Every record of the bundled library against published measurements and teaching, one source a test.</summary>
public sealed class WholeLibraryTests
{
    private const decimal Arm = Scene.ArmShare * Outside.MeanMan;

    private const decimal Leg = Scene.LegShare * Outside.MeanMan;

    private static IReadOnlyList<Technique> All { get; } = [.. Outside.Book.Techniques.DistinctBy(t => t.BaseId, StringComparer.Ordinal)];

    private static List<Technique> Kicks => [.. All.Where(t => t.Family is Family.Kick or Family.Finish && t.Band.Limb == Limb.Leg)];

    private static List<Technique> HandStrikes => [.. All.Where(t => t.Family is Family.Strike or Family.Finish && t.Band.Limb == Limb.Arm && t.Demands.Any(d => d.EndsWith("-hand", StringComparison.Ordinal)))];

    [Fact(DisplayName = "Corcoran et al. 2024 (Sports 12:74): feet reach 18.3 m/s at most; no kick of the library covers its reach faster, for a performer of 2.00 m")]
    public void Kicks_are_slower_than_the_fastest_foot() => Each(Kicks, 35, t => t.Band.To * Scene.LegShare * 2m / t.FewestSeconds <= 18.3m);

    [Fact(DisplayName = "Beránek, Votápek and Stastny 2020 (Sports Biomech): hand strikes stay below 15 m/s; so does every one of the library, for a performer of 2.00 m")]
    public void Hand_strikes_are_slower_than_the_fastest_hand() => Each(HandStrikes, 30, t => t.Band.To * Scene.ArmShare * 2m / t.FewestSeconds <= 15m);

    [Fact(DisplayName = "Liu et al. 2022 (Front Physiol 13:1015154): an elite lead straight peaks at 7.16 m/s; the performed jab covers its reach more slowly")]
    public void The_jab_is_slower_than_an_elite_one() => Each(Outside.Techniques("jab"), 1, t => t.Band.To * Arm / t.FewestSeconds < 7.16m);

    [Fact(DisplayName = "Estevan et al. 2013 (Sports Biomech): a kick takes 261 ms for each metre of distance even when it is short; no kick of the library is quicker for its distance")]
    public void Kicks_take_their_time_for_the_distance() => Each(Kicks, 35, t => t.FewestSeconds >= 0.261m * t.Band.To * Leg);

    [Fact(DisplayName = "Wąsik and Góra 2016 (Balt J Health Phys Act 8(4)): a back kick takes 0.77 s; every kick to the rear of the library is given that")]
    public void Every_kick_to_the_rear() =>
        Each([.. All.Where(t => t.BaseId.Contains("back-kick", StringComparison.Ordinal) || (t.Band.Limb == Limb.Leg && t.Window == new Window(9, 15) && t.Family == Family.Kick))], 6, t => t.FewestSeconds >= 0.77m);

    [Fact(DisplayName = "Wąsik et al. 2022 (J Men's Health 18(6):138): a kick takes 0.45 s, performed 0.60 s; every kick that an attacker throws standing is given that")]
    public void Every_kick_of_an_attacker() =>
        Each(Outside.Book.Attacks.Where(a => a.Line.Kind is >= LineKind.KickMiddleStraight and <= LineKind.KickHighRound).ToList(), 10, a => a.FewestSeconds >= 0.60m);

    [Theory(DisplayName = "ANSUR II 2012, Drillis and Contini 1966: elbow, fist and foot reach in this order, for every body from 1.50 to 2.00 m")]
    [InlineData(150)]
    [InlineData(160)]
    [InlineData(170)]
    [InlineData(180)]
    [InlineData(190)]
    [InlineData(200)]
    public void Elbow_fist_foot(int height)
    {
        var scene = Outside.Scene(h => h with { Height = new Centimetres(height) }, a => a with { Height = new Centimetres(height) });
        int Far(string id) => scene.TechniqueReach(scene.Book.TechniqueIndex(id), 0).Far;
        var elbow = new[] { "elbow-across-right", "elbow-up-right", "elbow-down-right", "elbow-back-right", "elbow-side-right", "rebound-elbow-right", "finishing-elbow-right" }.Max(Far);
        var fist = new[] { "jab-left", "cross-right", "overhand-right", "finishing-cross-right" };
        var foot = new[] { "high-round-kick-right", "inside-crescent-right", "finishing-round-kick-right" };

        Assert.True(elbow < fist.Min(Far));
        Assert.True(fist.Max(Far) < foot.Min(Far));
    }

    [Fact(DisplayName = "Pallaziol (The Textbook of Theatrical Combat, Kicks): a high kick keeps farther off than any punch reaches")]
    public void A_high_kick_starts_beyond_the_punches()
    {
        var punch = All.Where(t => t.Family == Family.Strike && t.Band.Limb == Limb.Arm && t.BaseId != "slap").Max(t => t.Band.To * Scene.ArmShare);
        Each([.. Kicks.Where(t => t is { Height: Height.High, Kind: ContactKind.NonContact } && t.Sells == Sells.Across)], 4, t => t.Band.From * Scene.LegShare > punch);
    }

    [Fact(DisplayName = "Robinovitch et al. 2005 (J Gerontol A 60:1553): a fall from standing takes 0.715 s to the pelvis; the hero is never thrown down faster")]
    public void The_hero_falls_no_faster() => Each([.. All.Where(t => t.HeroFall is not (FallClass.None or FallClass.ToKnee))], 5, t => t.FewestSeconds >= 0.715m);

    [Fact(DisplayName = "Drillis and Contini 1966 (knee at 0.285 of stature), free fall: a knee needs 0.32 s to the floor, so nobody drops to one faster")]
    public void Nobody_drops_to_a_knee_faster_than_free_fall()
    {
        var free = (decimal)Math.Sqrt(2 * 0.285 * (double)Outside.MeanMan / 9.80665);
        Assert.InRange(free, 0.31m, 0.33m);
        Each([.. All.Where(t => t.HeroFall == FallClass.ToKnee)], 2, t => t.FewestSeconds >= free);
    }

    [Fact(DisplayName = "Free fall, g = 9.80665 m/s2: a hop of 25 cm keeps the feet off the floor for 0.45 s, so every jump has that time")]
    public void Jumps_have_the_time_to_land()
    {
        var flight = 2 * (decimal)Math.Sqrt(2 * 0.25 / 9.80665);
        Assert.InRange(flight, 0.45m, 0.46m);
        Each([.. All.Where(t => t.Demands.Contains(Demand.Jump))], 7, t => t.FewestSeconds >= flight);
    }

    [Fact(DisplayName = "Kinematic analysis of the fencing lunge (Univ. of Tehran): a long step in takes about half a second; so does every step of 60 cm or more")]
    public void Long_steps_take_half_a_second() => Each([.. All.Where(t => t.Band.StepIn.Value >= 60)], 15, t => t.FewestSeconds >= 0.5m);

    [Fact(DisplayName = "Pol J Sport Tourism 2016, 23(4):181: a novice fencer's lunge moves at 2.21 m/s; no step in of the library is faster")]
    public void Steps_in_are_no_faster_than_a_lunge() => Each([.. All.Where(t => t.Band.StepIn.Value > 0)], 60, t => t.Band.StepIn.Metres / t.FewestSeconds <= 2.21m);

    [Fact(DisplayName = "Bohannon 1997 (Age Ageing 26:15): nobody walks faster than 2.53 m/s; nobody who reels back does, until ready again")]
    public void Nobody_reels_back_faster_than_a_walk() => Each(Outside.Book.Reactions.Where(r => r.ReadySeconds > 0).ToList(), 25, r => r.Back.Metres / r.ReadySeconds!.Value <= 2.53m);

    [Fact(DisplayName = "Woods et al. 2015 (Front Hum Neurosci 9:131): seeing and moving takes 0.231 s; no defence is given less")]
    public void No_defence_beats_the_reaction_time() => Each([.. All.Where(t => t.Family is Family.Defence or Family.Escape)], 90, t => t.FewestSeconds >= 0.231m);

    [Fact(DisplayName = "Robinovitch et al. 2005: hands come up in 0.53 s; every attack, its wind-up being the cue, lasts that at the default tempo")]
    public void Every_attack_lasts_a_reaction() => Each(Outside.Book.Attacks, 60, a => Tempo.Default.SecondsIn(a.Length) >= 0.53m);

    [Fact(DisplayName = "Pallaziol (victim stays in control): whoever is held, locked or thrown by the hands does it together with the hero")]
    public void Holds_locks_and_throws_are_done_together() =>
        Each([.. All.Where(t => t.Family == Family.Lock || (t.Family == Family.Throw && (t.LeftNeed == HandNeed.TakeHold || t.RightNeed == HandNeed.TakeHold || t.LeftNeed == HandNeed.Holding)))], 30, t => t.Kind == ContactKind.Partnered);

    [Fact(DisplayName = "Pallaziol (the victim drives): a grip is the gripper's, but every setback with a grip and every escape is done together")]
    public void Grips_are_done_together() => Each([.. All.Where(t => t.Family == Family.Setback && t.Reactions.Contains("keeps-grip"))], 12, t => t.Kind == ContactKind.Partnered);

    [Fact(DisplayName = "School hand-outs (knap): whoever makes the sound has a hand for it, so the hero never knaps with both hands full")]
    public void Whoever_knaps_has_a_hand() => Each([.. All.Where(t => t.Knap == Knap.Hero)], 25, t => !(t.LeftEnd is HandEnd.Holding or HandEnd.Held && t.RightEnd is HandEnd.Holding or HandEnd.Held));

    [Fact(DisplayName = "ANSUR II 2012: fingertips reach 0.464 of stature from the shoulder; nobody takes lapels, collar or throat from farther off")]
    public void Nobody_grabs_beyond_the_fingertips()
    {
        var grabs = Outside.Book.Attacks.Where(a => a.Line.Kind is LineKind.GrabLapels or LineKind.GrabCollar or LineKind.GrabThroat or LineKind.GrabSleeve or LineKind.GrabShouldersRear or LineKind.GrabHairRear).ToList();
        Each(grabs, 8, a => a.Contact.To * Scene.ArmShare <= 0.464m);
    }

    [Fact(DisplayName = "ANSUR II 2012: a straight leg spans 0.644 of stature; no foot is placed on anybody farther off than that and half a trunk of 15 cm")]
    public void No_foot_is_placed_beyond_the_leg() =>
        Each([.. All.Where(t => t.Kind == ContactKind.Partnered && t.Band.Limb == Limb.Leg && t.Demands.Any(d => d.EndsWith("-leg", StringComparison.Ordinal)))], 9, t => t.Band.To * Leg <= (0.644m * Outside.MeanMan) + 0.15m);

    [Fact(DisplayName = "Stage Combat Moves Test (school hand-out): sit first, head last; every back fall that the hero suffers says so")]
    public void Sit_first_head_last() => Each([.. All.Where(t => t is { Family: Family.Setback, HeroFall: FallClass.Back })], 3, t => t.Safety.Contains("sit", StringComparison.OrdinalIgnoreCase));

    [Fact(DisplayName = "Stage-combat safety hand-out (mats): every fall beyond a knee asks for a mat, or lands on what is rated and padded")]
    public void Falls_ask_for_a_mat() => Each(Outside.Book.Reactions.Where(r => r.Fall is not (FallClass.None or FallClass.ToKnee) && r.Id != "rolls-through").ToList(), 10, r => r.Surface == SurfaceNeed.Mat || (r.Uses is { } need && Outside.Book.Things.Of(need.Use) is { Rated: true, Padded: true }));

    [Fact(DisplayName = "Lecure (Stage Directions, October 1996): contact is on large muscles; no contact move names throat, spine or head as what it touches")]
    public void Contact_is_on_muscle() =>
        Each([.. All.Where(t => t.Kind == ContactKind.Contact && t.Family is Family.Strike or Family.Kick)], 12, t => t.Height != Height.High && (!t.Hazard.Contains("throat", StringComparison.Ordinal)));

    /// <summary>Asserts of at least so many records that each fits, and names the one that does not.</summary>
    private static void Each<T>(IReadOnlyList<T> records, int atLeast, Func<T, bool> fits)
        where T : class
    {
        Assert.True(records.Count >= atLeast, $"only {records.Count} records");
        Assert.All(records, r => Assert.True(fits(r), r switch { Technique t => t.Id, Attack a => a.Id, Reaction e => e.Id, _ => string.Empty }));
    }
}
