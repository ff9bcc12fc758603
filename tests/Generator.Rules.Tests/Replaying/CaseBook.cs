using Generator.Domain;

namespace Generator.Rules.Tests.Replaying;

/// <summary>
/// Plain records from which each case makes its own with the one or two figures that matter. Together with <see cref="Case"/> the sums stay
/// visible: limbs of 100 cm, so that a share of 0.9 is 90 cm; everybody at 1 m/s; 60 counts a minute, so that a half count is half a second.
/// </summary>
internal static class CaseBook
{
    public static readonly StanceSet Anyhow = StanceSet.Of(Enum.GetValues<Stance>());

    private static readonly Band Wide = new(Limb.Arm, 0m, 9m, new Centimetres(0), new Centimetres(0), false);

    /// <summary>Works from every stance, hands, side and distance; takes one count.</summary>
    public static readonly Technique Hit = new()
    {
        Id = "hit",
        BaseId = "hit",
        Name = "Hit",
        Family = Family.Strike,
        Starts = Anyhow,
        Band = Wide,
        Length = new HalfCounts(2),
        FewestSeconds = 0.5m,
        Needs = PostureSet.Of(Enum.GetValues<Posture>()),
        Weight = 1,
        Kind = ContactKind.Contact,
    };

    /// <summary>A pause without a target; takes one count.</summary>
    public static readonly Technique Wait = Hit with { Id = "wait", BaseId = "wait", Name = "Wait", Family = Family.Pause, Needs = PostureSet.Empty };

    /// <summary>A blow from the front, thrown at striking distance, which is 90 cm.</summary>
    public static readonly Attack Blow = new()
    {
        Id = "blow",
        BaseId = "blow",
        Name = "Blow",
        Line = new AttackLine(LineKind.HighStraight, LineSide.Centre),
        HeroStances = Anyhow,
        From = Window.Anywhere,
        Contact = Wide,
        Length = new HalfCounts(2),
        FewestSeconds = 0.5m,
    };

    /// <summary>A grab that binds the hero from the front.</summary>
    public static readonly Attack Seize = Blow with
    {
        Id = "seize",
        BaseId = "seize",
        Name = "Seize",
        Line = new AttackLine(LineKind.GrabLapels, LineSide.Centre),
        GripsBound = Bound.Front,
    };

    /// <summary>Off balance where they stand, open for 1 s (2 half counts), ready after 2 s (4 half counts).</summary>
    public static readonly Reaction Reels = new() { Id = "reels", Name = "Reels", Posture = Posture.OffBalance, OpenSeconds = 1m, ReadySeconds = 2m };

    /// <summary>Held by the arm until let go.</summary>
    public static readonly Reaction Caught = new() { Id = "caught", Name = "Caught", Posture = Posture.HeldArm };

    /// <summary>Keeps or takes a grip on the hero.</summary>
    public static readonly Reaction Grips = new() { Id = "grips", Name = "Grips", Posture = Posture.Gripping };

    /// <summary>Posture as before.</summary>
    public static readonly Reaction Shakes = new() { Id = "shakes", Name = "Shakes", Posture = null };

    /// <summary>Out where they are.</summary>
    public static readonly Reaction Drops = new() { Id = "drops", Name = "Drops", Posture = Posture.Out };

    /// <summary>
    /// Times as the library gives them: one count on the feet and from a knee (novices 3 half counts from a knee), from the back 8 half counts
    /// trained and 14 novice, from hands and knees 5 and 9. A raised leg must come down first.
    /// </summary>
    public static StanceTable Stances()
    {
        StanceInfo[] all =
        [
            Feet(Stance.LeftLead, Stance.RightLead, Stance.Square, Stance.Low, Stance.KneelingLeft, Stance.KneelingRight),
            Feet(Stance.RightLead, Stance.LeftLead, Stance.Square, Stance.Low, Stance.KneelingLeft, Stance.KneelingRight),
            Feet(Stance.Square, Stance.LeftLead, Stance.RightLead, Stance.Low, Stance.KneelingLeft, Stance.KneelingRight),
            Feet(Stance.Low, Stance.LeftLead, Stance.RightLead, Stance.Square, Stance.KneelingLeft, Stance.KneelingRight),
            From(Stance.KneelingLeft, 2, 3, Stance.LeftLead, Stance.RightLead, Stance.Square, Stance.Low),
            From(Stance.KneelingRight, 2, 3, Stance.LeftLead, Stance.RightLead, Stance.Square, Stance.Low),
            Feet(Stance.OnLeftLeg, Stance.LeftLead, Stance.RightLead, Stance.Square),
            Feet(Stance.OnRightLeg, Stance.LeftLead, Stance.RightLead, Stance.Square),
            Lying(Stance.FloorBack, (8, 14), (4, 6)),
            Lying(Stance.FloorFront, (5, 9), (2, 2)),
        ];
        return new StanceTable(all);
    }

    private static StanceInfo Feet(Stance stance, params Stance[] to) => From(stance, 2, 2, to);

    private static StanceInfo From(Stance stance, int trained, int novice, params Stance[] to) => Info(stance, to.Select(t => Change(t, trained, novice)));

    private static StanceInfo Lying(Stance stance, (int Trained, int Novice) up, (int Trained, int Novice) knee) => Info(stance,
    [
        Change(Stance.LeftLead, up.Trained, up.Novice),
        Change(Stance.RightLead, up.Trained, up.Novice),
        Change(Stance.Square, up.Trained, up.Novice),
        Change(Stance.Low, up.Trained, up.Novice),
        Change(Stance.KneelingLeft, knee.Trained, knee.Novice),
        Change(Stance.KneelingRight, knee.Trained, knee.Novice),
    ]);

    private static StanceChange Change(Stance to, int trained, int novice) => new(to, new HalfCounts(trained), new HalfCounts(novice));

    private static StanceInfo Info(Stance stance, IEnumerable<StanceChange> changes) =>
        new() { Stance = stance, Name = stance.ToString(), HeightShare = 1m, Changes = [.. changes] };
}
