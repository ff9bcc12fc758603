using Generator.Domain;
using Generator.Library;

namespace Generator.Testing;

/// <summary>A library of a few records, enough to read and write with; figures are made up for tests.</summary>
public static class TinyBook
{
    private static readonly StanceSet Standing = StanceSet.Of(Stance.LeftLead, Stance.RightLead, Stance.Square, Stance.Low);

    private static readonly PostureSet Shaken = PostureSet.Of(Posture.Folded, Posture.HeadBack, Posture.Turned, Posture.OffBalance);

    public static Book Book { get; } = new(
        "tiny-1",
        new StanceTable([.. Enum.GetValues<Stance>().Select(Info)]),
        new Settle
        {
            Wardrobe = new Dictionary<string, IReadOnlyList<string>>(StringComparer.Ordinal) { ["heels"] = ["jump"], ["tight-skirt"] = ["high-kick", "kneel"] },
        },
        Techniques(),
        Attacks(),
        Reactions())
    {
        Manners =
        [
            new Manner { Id = "swinger", Name = "Swinger", Aliases = ["wide boy"], Attacks = [AttackKind.Swing], Families = [Family.Strike], AnsweredPercent = 5, Usual = true, Note = "Swings." },
            new Manner { Id = "holder", Name = "Holder", Attacks = [AttackKind.Grab, AttackKind.Rush], Families = [Family.Throw, Family.Lock], AnsweredPercent = 30, Note = "Holds on." },
        ],
    };

    private static IEnumerable<Technique> Techniques() =>
    [
        Sided("outside-block", "Outside block", Side.Left, Family.Defence, ["limb-stopped"]) with
        {
            Aliases = ["outer block", "forearm block"],
            Answers = Lines((LineKind.HighRound, LineSide.Left), (LineKind.HighOver, LineSide.Left)),
            LeftNeed = HandNeed.Guard,
            LeftEnd = HandEnd.Out,
        },
        Sided("parry-down", "Parry down", Side.Left, Family.Defence, ["limb-swept-in", "head-drops"]) with
        {
            Aliases = ["low parry"],
            Answers = Lines((LineKind.MiddleStraight, LineSide.Left), (LineKind.HighStraight, LineSide.Left)),
        },
        Sided("side-step", "Side step", Side.Left, Family.Defence, ["stumbles-past", "falls-short"]) with
        {
            Aliases = ["slip out"],
            Answers = Lines((LineKind.RushUpright, LineSide.Centre), (LineKind.HighStraight, LineSide.Left), (LineKind.HighStraight, LineSide.Right)),
        },
        Sided("front-punch", "Front punch", Side.Right, Family.Strike, ["head-back", "folds", "staggers-back"]) with
        {
            Aliases = ["straight punch"],
            Needs = Shaken,
            RightNeed = HandNeed.Guard,
            RightEnd = HandEnd.Out,
        },
        Sided("side-kick", "Side kick", Side.Right, Family.Kick, ["folds", "back-fall"]) with { Needs = Shaken, Weight = 3 },
        Sided("hip-throw", "Hip throw", Side.Right, Family.Throw, ["thrown-over", "thrown-and-held"]) with { Aliases = ["hip toss"], Needs = Shaken, Weight = 5, Draws = true },
        Plain("shove-off", "Shove off", Family.Strike, ["staggers-back"]) with { Needs = Shaken },
        Plain("drop-finish", "Drop finish", Family.Finish, ["out-flat", "out-crumples"]) with { Needs = Shaken, Weight = 4 },
        Sided("thumb-escape", "Thumb escape", Side.Left, Family.Escape, ["grip-breaks"]) with { Answers = Lines((LineKind.GrabWrist, LineSide.Left)) },
        Plain("knocked-down", "Knocked down", Family.Setback, ["presses-on", "holds-off"]) with
        {
            EndStance = Stance.FloorBack,
            HeroFall = FallClass.Back,
            Needs = PostureSet.Of(Posture.Ready),
        },
        Plain("stare-down", "Stare down", Family.Pause, ["holds-off"]) with { Needs = PostureSet.Of(Posture.Ready) },
        Plain("catch-breath", "Catch breath", Family.Pause, []) with { Aliases = ["breather"] },
        Plain("rise", "Rise", Family.Pause, []) with { Recovery = true, Starts = StanceSet.Of(Stance.FloorBack), EndStance = Stance.LeftLead },
    ];

    private static IEnumerable<Attack> Attacks() =>
    [
        Thrown("swing", "Swing", Side.Right, LineKind.HighRound, LineSide.Left) with { Aliases = ["hook", "haymaker"] },
        Thrown("cross", "Cross", Side.Right, LineKind.HighStraight, LineSide.Left) with { Aliases = ["rear straight"] },
        Thrown("rush", "Rush", null, LineKind.RushUpright, LineSide.Centre) with { Aliases = ["charge"] },
        Thrown("wrist-grab", "Wrist grab", Side.Right, LineKind.GrabWrist, LineSide.Left),
    ];

    private static IEnumerable<Reaction> Reactions() =>
    [
        Left("limb-stopped", "Limb stopped", Posture.OffBalance) with { Aliases = ["blocked"] },
        Left("limb-swept-in", "Limb swept in", Posture.Turned),
        Left("head-drops", "Head drops", Posture.Folded),
        Left("stumbles-past", "Stumbles past", Posture.OffBalance) with { Round = 12 },
        Left("falls-short", "Falls short", Posture.OffBalance),
        Left("head-back", "Head back", Posture.HeadBack) with { Aliases = ["chin up"] },
        Left("folds", "Folds", Posture.Folded) with { Aliases = ["doubles over"] },
        Left("staggers-back", "Staggers back", Posture.OffBalance) with { Back = new Centimetres(80) },
        Left("back-fall", "Back fall", Posture.OnBack) with { Fall = FallClass.Back, ReadySeconds = 3.3m },
        Left("thrown-over", "Thrown over", Posture.OnBack) with { Fall = FallClass.ThrownOver, ReadySeconds = 3.6m, Surface = SurfaceNeed.Mat },
        Left("thrown-and-held", "Thrown and held", Posture.HeldArm) with { Fall = FallClass.ThrownOver },
        Left("grip-breaks", "Grip breaks", Posture.OffBalance),
        Left("presses-on", "Presses on", Posture.Ready),
        Left("holds-off", "Holds off", Posture.Ready),
        Left("out-flat", "Out flat", Posture.Out) with { Fall = FallClass.Back },
        Left("out-crumples", "Out crumples", Posture.Out) with { Fall = FallClass.Side },
    ];

    private static Technique Sided(string id, string name, Side side, Family family, string[] reactions) => Plain(id, name, family, reactions) with
    {
        Id = Mirror.Id(id, side),
        Name = name + (side == Side.Left ? " left" : " right"),
        Side = side,
    };

    private static Technique Plain(string id, string name, Family family, string[] reactions) => new()
    {
        Id = id,
        BaseId = id,
        Name = name,
        Family = family,
        Starts = Standing,
        Band = new Band(Limb.Arm, 0.4m, 1.9m, new Centimetres(40), new Centimetres(20), MeetsOnTheWay: false),
        Length = HalfCounts.FromCounts(2),
        FewestSeconds = 0.6m,
        Reactions = reactions,
        Weight = 2,
    };

    private static Attack Thrown(string id, string name, Side? side, LineKind kind, LineSide at) => new()
    {
        Id = Mirror.Id(id, side),
        BaseId = id,
        Name = name + side switch { Side.Left => " left", Side.Right => " right", _ => string.Empty },
        Side = side,
        Line = new AttackLine(kind, at),
        HeroStances = Standing,
        From = Window.Anywhere,
        StartDistance = new Centimetres(170),
        Contact = new Band(Limb.Arm, 1.4m, 1.75m, default, default, MeetsOnTheWay: false),
        Length = HalfCounts.FromCounts(2),
        FewestSeconds = 0.7m,
    };

    private static Reaction Left(string id, string name, Posture posture) => new() { Id = id, Name = name, Posture = posture, OpenSeconds = 1.2m, ReadySeconds = 1.8m };

    private static LineSet Lines(params (LineKind Kind, LineSide Side)[] lines) => LineSet.Of(lines.Select(l => new AttackLine(l.Kind, l.Side)));

    private static StanceInfo Info(Stance stance) => new()
    {
        Stance = stance,
        Name = stance.ToString(),
        HeightShare = stance.IsFloor() ? 0.3m : 0.95m,
        Changes = [.. Enum.GetValues<Stance>().Where(s => s != stance && !s.IsFloor()).Select(s => new StanceChange(s, new HalfCounts(stance.IsFloor() ? 8 : 2), new HalfCounts(stance.IsFloor() ? 14 : 3)))],
    };
}
