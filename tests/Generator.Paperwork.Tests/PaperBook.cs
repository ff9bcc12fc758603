using Generator.Domain;
using Generator.Library;

namespace Generator.Paperwork.Tests;

/// <summary>A library just large enough to print every kind of line; its figures are made up so that counts are easy to work out.</summary>
internal static class PaperBook
{
    private static readonly StanceSet Standing = StanceSet.Of(Stance.LeftLead, Stance.RightLead, Stance.Square);

    public static Book Book { get; } = new(
        "paper-1",
        new StanceTable([Stand(Stance.LeftLead, "Left lead"), Stand(Stance.RightLead, "Right lead"), Stand(Stance.FloorBack, "On the back")]),
        new Settle(),
        [
            Technique("parry-down", "Parry down left", Family.Defence, ["head-drops"]) with { Side = Side.Left, Answers = Lines(LineKind.HighRound, LineSide.Left), LeftEnd = HandEnd.Out },
            Technique("rising-knee", "Rising knee", Family.Kick, ["back-fall"]) with { Starts = StanceSet.Of(Stance.RightLead), Needs = PostureSet.Of(Posture.Folded), EndStance = Stance.RightLead },
            Technique("arm-catch", "Arm catch", Family.Lock, ["arm-held"]) with { Answers = Lines(LineKind.HighRound, LineSide.Left), RightEnd = HandEnd.Holding },
            Technique("elbow-finish", "Elbow finish", Family.Finish, ["out-flat"]) with { Needs = PostureSet.Of(Posture.HeldArm, Posture.Folded), Length = new HalfCounts(3) },
            Technique("shove-on", "Shove on", Family.Throw, ["crashes-on"]) with { Needs = PostureSet.Of(Posture.Folded) },
            Technique("knocked-down", "Knocked down", Family.Setback, ["holds-off"]) with { Needs = PostureSet.Of(Posture.Ready), HeroFall = FallClass.Back, EndStance = Stance.FloorBack },
            Technique("catch-breath", "Catch breath", Family.Pause, []),
        ],
        [
            Attack("swing", "Swing right", LineKind.HighRound, LineSide.Left),
            Attack("rush", "Rush", LineKind.RushUpright, LineSide.Centre),
        ],
        [
            Reaction("head-drops", "Head drops", Posture.Folded, 0),
            Reaction("back-fall", "Back fall", Posture.OnBack, 40) with { Fall = FallClass.Back, ReadySeconds = 3 },
            Reaction("arm-held", "Arm held", Posture.HeldArm, 0) with { OpenSeconds = null, ReadySeconds = null },
            Reaction("out-flat", "Out flat", Posture.Out, 20) with { OpenSeconds = null, ReadySeconds = null, Fall = FallClass.Forward },
            Reaction("crashes-on", "Crashes on", Posture.OffBalance, 30) with { HitsSecond = true },
            Reaction("holds-off", "Holds off", Posture.Ready, 60),
        ]);

    private static StanceInfo Stand(Stance stance, string name) => new()
    {
        Stance = stance,
        Name = name,
        HeightShare = 1,
        Changes = [.. new[] { Stance.LeftLead, Stance.RightLead }.Where(s => s != stance).Select(s => new StanceChange(s, new HalfCounts(2), new HalfCounts(2)))],
    };

    private static Technique Technique(string id, string name, Family family, IReadOnlyList<string> reactions) => new()
    {
        Id = id,
        BaseId = id,
        Name = name,
        Family = family,
        Starts = Standing,
        Window = new Window(-2, 2),
        Band = new Band(Limb.Arm, 0.5m, 2m, default, default, MeetsOnTheWay: false),
        Length = HalfCounts.FromCounts(1),
        FewestSeconds = 0.4m,
        Reactions = reactions,
        Weight = 2,
    };

    private static Attack Attack(string id, string name, LineKind kind, LineSide side) => new()
    {
        Id = id,
        BaseId = id,
        Name = name,
        Line = new AttackLine(kind, side),
        HeroStances = Standing,
        From = Window.Anywhere,
        Contact = new Band(Limb.Arm, 0.5m, 2m, default, default, MeetsOnTheWay: false),
        Length = HalfCounts.FromCounts(1),
        FewestSeconds = 0.4m,
    };

    private static Reaction Reaction(string id, string name, Posture posture, int back) => new()
    {
        Id = id,
        Name = name,
        Posture = posture,
        OpenSeconds = 1.2m,
        ReadySeconds = 1.2m,
        NoviceReadySeconds = 4,
        Back = new Centimetres(back),
    };

    private static LineSet Lines(LineKind kind, LineSide side) => LineSet.Of([new AttackLine(kind, side)]);
}
