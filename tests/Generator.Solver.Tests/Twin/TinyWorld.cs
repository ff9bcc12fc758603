using Generator.Domain;
using Generator.Library;
using Generator.Rules;

namespace Generator.Solver.Tests.Twin;

/// <summary>
/// A made-up library of a few records and a brief for one or two attackers, drawn by a seed so that rules bite about as often as not.
/// Small enough to try every routine of it.
/// </summary>
internal sealed class TinyWorld
{
    private static readonly Band Anywhere = new(Limb.Arm, 0, 9, new Centimetres(0), new Centimetres(0), false);
    private readonly Random dice;

    /// <summary>Apart from the other dice, so that a world with somebody injured is otherwise the one that it would be without.</summary>
    private readonly Random injuries;
    private readonly Random answers;

    /// <summary>The same for the acts.</summary>
    private readonly Random acts;
    private readonly bool seconds;

    /// <param name="seed">The same seed gives the same world.</param>
    /// <param name="seconds">With a reaction that bumps into a second attacker, a technique that takes two, and two or three attackers close together.</param>
    /// <param name="beside">The second attacker stands half an hour round and a metre farther out, so that the first falls in their way.</param>
    /// <param name="holds">One attacker is held, or holds the hero, while another is fought, and somebody has a limit that this may be against: three moves by two attackers opposite one another.</param>
    /// <param name="combines">Whoever swings may swing or grab again at once, as combinations of the library have it, and should: three moves by one or two attackers.</param>
    public TinyWorld(int seed, bool seconds = false, bool beside = false, HoldTable? holds = null, bool combines = false)
    {
        Drawn = (seed, seconds, beside, holds, combines);
        dice = new Random(seed);
        injuries = new Random(~seed);
        answers = new Random(seed ^ 0x5A5A);
        acts = new Random(seed ^ 0x2A2A2A);
        this.seconds = seconds;
        Rows = 2 + dice.Next(2);
        MostGap = 1 + dice.Next(3);
        Book = holds is null
            ? new Book("tiny", Stances(), new Settle(), Techniques(), Attacks(), Reactions()) { Manners = Manners }
            : new Book("tiny", Stances(), new Settle(), Holding(holds), Attacks(), Reactions()) { Holds = holds, Manners = Manners };
        Book = combines ? new Book("tiny", Stances(), new Settle(), Again(), Attacks(), Reactions()) { Manners = Manners, Combinations = Combinations } : Book;
        (Rows, MostGap) = combines ? (3, 1) : holds is null ? (Rows, MostGap) : (3, 0);
        Brief = Liking(seed, holds is null ? DrawBrief() : Opposite(DrawBrief()), !seconds && holds is null && !beside);
        Brief = combines ? Combine(seed, Brief) : Brief;
        Brief = beside ? Brief with { Attackers = [.. Brief.Attackers.Select((a, i) => a with { Bearing = new Bearing(i), Distance = new Centimetres(150 + (110 * i)) })] } : Brief;
        Placements = [.. Brief.Attackers.Select(a => new Placement(a.Bearing!.Value, a.Distance!.Value, a.Entrance!.Value))];
        Scene = new Scene(Brief, Book);
    }

    /// <summary>From what it was drawn: the same gives the same world.</summary>
    public (int Seed, bool Seconds, bool Beside, HoldTable? Holds, bool Combines) Drawn { get; }

    public int Rows { get; }

    /// <summary>Longest gap before a row, the first one's counted from the moment its attacker can be there.</summary>
    public int MostGap { get; }

    public Book Book { get; }

    public Brief Brief { get; }

    public IReadOnlyList<Placement> Placements { get; }

    public Scene Scene { get; }

    private bool Chance(int percent) => dice.Next(100) < percent;

    private T One<T>(params T[] items) => items[dice.Next(items.Length)];

    private static StanceTable Stances()
    {
        var standing = new[] { Stance.LeftLead, Stance.RightLead, Stance.Square, Stance.Low };
        return new StanceTable(
        [
            .. Enum.GetValues<Stance>().Select(s => new StanceInfo
            {
                Stance = s,
                Name = s.ToString(),
                HeightShare = 1,
                Load = s == Stance.Low ? new Load { Bend = BodyParts.LeftLeg | BodyParts.RightLeg } : default,
                Changes = [.. standing.Where(t => t != s).Select(t => new StanceChange(t, new HalfCounts(s.IsFloor() ? 5 : 2), new HalfCounts(s.IsFloor() ? 9 : 3)))],
            }),
        ]);
    }

    private Technique Technique(string id, Family family, params string[] reactions) => new()
    {
        Id = id,
        BaseId = id,
        Name = id,
        Family = family,
        Starts = One(StanceSet.Of(Stance.LeftLead, Stance.Square), StanceSet.Of(Stance.LeftLead, Stance.RightLead, Stance.Square, Stance.Low), StanceSet.Of(Stance.Square)),
        EndStance = One<Stance?>(null, null, Stance.Square, Stance.LeftLead),
        Window = One(Window.Anywhere, Window.Anywhere, new Window(-4, 4), new Window(-2, 6), new Window(9, 15)),
        Turn = new Turn(One(0, 0, 0, 12, -3)),
        Carry = One(Carry.None, Carry.Clockwise, Carry.WithAttack),
        Band = Chance(70) ? Anywhere : new Band(Limb.Arm, 0.8m, 1.6m, new Centimetres(40), new Centimetres(20), Chance(20)),
        Length = new HalfCounts(One(2, 2, 3)),
        FewestSeconds = Chance(10) ? 0.65m : 0.5m,
        Reactions = [.. reactions.Where(_ => Chance(80)).DefaultIfEmpty(reactions[0])],
        Weight = 1 + dice.Next(5),
        HeroSkill = Chance(10) ? Skill.Stunt : Skill.Novice,
        Kind = One(ContactKind.NonContact, ContactKind.Contact),
        Knap = One(Knap.Victim, Knap.Breath),
        Sells = One(Sells.Any, Sells.Along, Sells.Across),
        Height = One(Height.High, Height.Middle),
        LeftNeed = One(HandNeed.Any, HandNeed.NotHolding, HandNeed.Guard, HandNeed.GuardOrOut),
        LeftEnd = HandEnd.Unchanged,
        RightNeed = HandNeed.Any,
    };

    /// <summary>Where the second one may be; mostly so wide that somebody is there.</summary>
    private SecondNeed SecondOne() => new(
        Chance(70) ? 0 : 2,
        Chance(70) ? 12 : 5,
        new(Chance(70) ? 0 : 90),
        new(Chance(70) ? 400 : 130),
        Chance(60) ? PostureSet.Of(Posture.OffBalance) : Chance(50) ? PostureSet.Of(Posture.OffBalance, Posture.Ready) : PostureSet.Of(Posture.Ready, Posture.Folded));

    private IEnumerable<Technique> Techniques()
    {
        var posture = PostureSet.Of(Posture.OffBalance, Posture.Folded);
        var lines = LineSet.Of([new AttackLine(LineKind.HighRound, LineSide.Left)]);
        var block = Technique("block", Family.Defence, seconds ? ["stopped", "bumps", "sent"] : ["stopped", "folds", "sent"]);
        yield return block with { Answers = lines, LeftEnd = block.LeftNeed == HandNeed.Guard ? HandEnd.Out : HandEnd.Unchanged };
        var strike = Technique("strike", Family.Strike, seconds ? ["bumps", "falls"] : ["folds", answers.Next(2) == 0 ? "falls" : "parries"]);
        yield return strike with { Needs = Chance(40) ? PostureSet.Of(Posture.OffBalance, Posture.Ready) : posture, RightNeed = HandNeed.Guard, RightEnd = HandEnd.Out, Load = new Load { Work = BodyParts.RightArm } };
        yield return Technique("finish", Family.Finish, "out") with { Needs = PostureSet.Of(Posture.Folded, Posture.OnBack, Posture.HeldArm) };
        if (seconds)
        {
            yield return Technique("heads", Chance(70) ? Family.Finish : Family.Throw, One("out", "falls"), "falls") with
            {
                Needs = PostureSet.Of(Posture.OffBalance, Posture.OnBack),
                AttackerSkill = Chance(20) ? Skill.Stunt : Skill.Novice,
                Two = SecondOne(),
            };
            yield break;
        }

        if (Chance(60))
        {
            yield return Technique("catch", Family.Lock, "held") with { Needs = posture, LeftNeed = HandNeed.TakeHold, LeftEnd = HandEnd.Holding, Draws = true };
            yield return Technique("jolt", Family.Strike, "shakes", "folds") with { Needs = PostureSet.Of(Posture.HeldArm) };
        }

        if (Chance(50))
        {
            yield return Technique("seized", Family.Setback, "grips") with
            {
                Answers = LineSet.Of([new AttackLine(LineKind.GrabWrist, LineSide.Left)]),
                LeftNeed = HandNeed.GuardOrOut,
                LeftEnd = HandEnd.Held,
                HeroFall = FallClass.None,
            };
            yield return Technique("escape", Family.Escape, "stopped") with
            {
                Answers = LineSet.Of([new AttackLine(LineKind.GrabWrist, LineSide.Left)]),
                LeftNeed = HandNeed.Held,
                LeftEnd = HandEnd.Out,
            };
        }

        if (Chance(40))
        {
            yield return Technique("breath", Family.Pause, "none") with { Reactions = [], Knap = Knap.Breath };
        }
    }

    /// <summary>Catches, seizures and what goes on meanwhile, wherever everybody stands. With no holds given a kick leans on nobody.</summary>
    private IEnumerable<Technique> Holding(HoldTable holds)
    {
        var (round, wrist) = (LineSet.Of([new AttackLine(LineKind.HighRound, LineSide.Left)]), LineSet.Of([new AttackLine(LineKind.GrabWrist, LineSide.Left)]));
        var leans = ReferenceEquals(holds, HoldTable.Empty) ? default : new Load { Carry = BodyParts.LeftKnee };
        return
        [
            Easy("catch", Family.Defence, "held") with { Answers = round, LeftNeed = HandNeed.Guard, LeftEnd = HandEnd.Holding, RightNeed = HandNeed.Any },
            Easy("seized", Family.Setback, "grips") with { Answers = wrist, LeftNeed = HandNeed.Guard, LeftEnd = HandEnd.Held },
            Easy("kick", Family.Kick, "folds", "stopped") with { Needs = PostureSet.Of(Posture.Ready), LeftNeed = HandNeed.Any, Supported = true, SupportLoad = leans },
            Easy("block", Family.Defence, "stopped") with { Answers = round, LeftNeed = HandNeed.Any },
            Easy("finish", Family.Finish, "out") with { Needs = PostureSet.Of(Posture.HeldArm, Posture.Folded), LeftNeed = HandNeed.Any },
            Easy("escape", Family.Escape, "stopped") with { Answers = wrist, LeftNeed = HandNeed.Held, LeftEnd = HandEnd.Out },
        ];
    }

    /// <summary>Answers that leave an attacker ready as often as not, the second too slow for what must come at once.</summary>
    private IEnumerable<Technique> Again()
    {
        var (round, wrist) = (LineSet.Of([new AttackLine(LineKind.HighRound, LineSide.Left)]), LineSet.Of([new AttackLine(LineKind.GrabWrist, LineSide.Left)]));
        return
        [
            Easy("block", Family.Defence, "again", "stopped") with { Answers = round, LeftNeed = HandNeed.Any },
            Easy("slow", Family.Defence, "again") with { Answers = round, LeftNeed = HandNeed.Any, Length = new HalfCounts(3) },
            Easy("strike", Family.Strike, "folds") with { Needs = PostureSet.Of(Posture.OffBalance, Posture.Ready), LeftNeed = HandNeed.Any },
            Easy("escape", Family.Escape, "stopped") with { Answers = wrist, LeftNeed = HandNeed.Held, LeftEnd = HandEnd.Guard },
        ];
    }

    private static Brief Combine(int seed, Brief brief)
    {
        var mixed = new Random(seed ^ 0x1357);
        return brief with
        {
            Length = new Length(null, 3, 1),
            Moments = [],
            Ending = null,
            Setbacks = null,
            Pauses = null,
            Judged = [FightRule.Manner],
            Attackers = [.. brief.Attackers.Take(1 + mixed.Next(2)).Select(a => a with { Manner = mixed.Next(4) == 0 ? "swinger" : "combiner", Entrance = HalfCounts.Zero })],
        };
    }

    private static readonly IReadOnlyList<Combination> Combinations =
    [
        Combined("twice", 2, "swing", "swing"),
        Combined("thrice", 3, "swing", "swing", "swing"),
        Combined("reach", 3, "swing", "grab"),
    ];

    private static Combination Combined(string id, int gap, params string[] attacks) =>
        new() { Id = id, Name = id, Attacks = [.. attacks.Select(a => new CombinationPart(a, null))], Gap = new HalfCounts(gap), GapSeconds = 0.3m * gap };

    private Technique Easy(string id, Family family, params string[] reactions) => Technique(id, family, reactions) with
    {
        Starts = StanceSet.Of(Enum.GetValues<Stance>()),
        Window = Window.Anywhere,
        Band = Anywhere,
        Turn = default,
        EndStance = null,
        Length = new HalfCounts(2),
        FewestSeconds = 0.5m,
        HeroSkill = Skill.Novice,
    };

    private Brief Opposite(Brief brief)
    {
        string[] limits = ["left-elbow: no strain", "right-elbow: no strain", "left-knee: no carry", "neck: no strain"];
        return brief with
        {
            Hero = brief.Hero with { Limits = injuries.Next(3) == 0 ? [limits[injuries.Next(2)]] : [] },
            Attackers = [.. new[] { "Ash", "Birch" }.Select((n, i) => new AttackerPart
            {
                Name = n,
                Skill = Skill.Stunt,
                Bearing = new Bearing(12 * i),
                Distance = new Centimetres(120 + (60 * dice.Next(2))),
                Entrance = HalfCounts.Zero,
                Limits = injuries.Next(2) == 0 ? [limits[injuries.Next(4)]] : [],
            })],
            Moments = [],
            Ending = null,
        };
    }

    private IEnumerable<Attack> Attacks()
    {
        yield return Attack("swing", LineKind.HighRound);
        yield return Attack("grab", LineKind.GrabWrist) with { GripsLeft = HandEnd.Held, GripsStance = injuries.Next(2) == 0 ? Stance.Low : null };
        if (Chance(30))
        {
            yield return Attack("walk", LineKind.WalkIn);
        }
    }

    private Attack Attack(string id, LineKind kind) => new()
    {
        Id = id,
        BaseId = id,
        Name = id,
        Line = new AttackLine(kind, LineSide.Left),
        HeroStances = StanceSet.Of(Enum.GetValues<Stance>()),
        From = One(Window.Anywhere, Window.Anywhere, new Window(-4, 4)),
        Contact = new Band(Limb.Arm, 1.2m, 1.6m, new Centimetres(0), new Centimetres(0), false),
        Length = new HalfCounts(Chance(20) ? 1 : 2),
        FewestSeconds = 0.25m,
        NonContact = Chance(50),
    };

    private IEnumerable<Reaction> Reactions()
    {
        yield return Reaction("stopped", Posture.OffBalance, 0.6m, 0.9m);
        yield return Reaction("folds", Posture.Folded, 0.9m, 1.2m) with { Risk = Chance(30) ? "ribs" : string.Empty };
        yield return Reaction("sent", Posture.OffBalance, 1.2m, 1.5m) with { Back = new Centimetres(One(80, 150)), Round = One(0, 2, 12) };
        yield return Reaction("falls", Posture.OnBack, 1.8m, 3.3m) with { Fall = FallClass.Back, Back = new Centimetres(60), Surface = SurfaceNeed.Mat };
        yield return Reaction("parries", Posture.Ready, 0m, answers.Next(2) == 0 ? 0m : 0.6m) with { AnswersBlow = true, Back = new Centimetres(25 * answers.Next(2)) };
        yield return Reaction("again", Posture.Ready, 0m, 0m);
        yield return Reaction("held", Posture.HeldArm, null, null);
        yield return Reaction("shakes", null, null, null);
        yield return Reaction("grips", Posture.Gripping, null, null);
        if (seconds)
        {
            yield return Reaction("bumps", Posture.OffBalance, 1.2m, 1.8m) with { HitsSecond = true, Load = new Load { Strain = BodyParts.LeftShoulder }, Back = new Centimetres(One(0, 60)), Round = One(0, 0, 2) };
        }

        yield return Reaction("out", Posture.Out, null, null) with { Fall = Chance(50) ? FallClass.Side : FallClass.None, Back = new Centimetres(One(0, 40, 300)) };
    }

    private static Reaction Reaction(string id, Posture? posture, decimal? open, decimal? ready) => new()
    {
        Id = id,
        Name = id,
        Posture = posture,
        OpenSeconds = open,
        ReadySeconds = ready,
        NoviceReadySeconds = ready,
    };

    private IReadOnlyList<Act> Acts()
    {
        HeroStanding[] standings = Enum.GetValues<HeroStanding>();
        int?[] setbacks = [null, null, 0, 1, 2];
        return acts.Next(2) == 0 ? [] : [.. new[] { 30, 40, 30 }.Select(p => new Act(p, standings[acts.Next(3)], setbacks[acts.Next(5)]))];
    }

    private static readonly IReadOnlyList<Manner> Manners =
    [
        new() { Id = "swinger", Name = "Swinger", Attacks = [AttackKind.Swing], Families = [Family.Strike] },
        new() { Id = "combiner", Name = "Combiner", Attacks = [AttackKind.Swing, AttackKind.Grab], Families = [Family.Strike], CombinationPercent = 50 },
        new() { Id = "holder", Name = "Holder", Attacks = [AttackKind.Grab], Families = [Family.Throw, Family.Lock] },
    ];

    /// <summary>Manners, wishes and music, by chance of their own: judged where there are acts, or because they are asked for.</summary>
    private static Brief Liking(int seed, Brief brief, bool plays)
    {
        var likes = new Random(seed ^ 0x777);
        string?[] manners = [null, null, "swinger", "holder"];
        string[] words = ["strike", "swing", "catch", "grab", "finish"];
        return brief with
        {
            Music = plays ? Music(new Random(seed ^ 0x3333)) : null,
            Hero = brief.Hero with { Manner = manners[likes.Next(4)] },
            Attackers = [.. brief.Attackers.Select(a => a with { Manner = manners[likes.Next(4)] })],
            Signature = likes.Next(3) == 0 ? "strike" : likes.Next(3) == 0 ? "swing" : null,
            Avoid = likes.Next(4) == 0 ? [words[likes.Next(2)]] : [],
            Favour = likes.Next(3) == 0 ? [words[2 + likes.Next(3)]] : [],
        };
    }

    private static Music? Music(Random beats) => beats.Next(3) != 0 ? null : new Music
    {
        Holds = beats.Next(2) == 0 ? [] : [new MusicHold(new HalfCounts(4 + (2 * beats.Next(3))), 2m, null)],
        Accents = beats.Next(3) == 0 ? [] : [new HalfCounts(3 + beats.Next(3)), new HalfCounts(7 + beats.Next(4))],
    };

    /// <summary>Hard floors that are wide have a mat before the hero.</summary>
    private static FloorPlan Laid(FloorPlan floor) => floor is { Surface: Surface.Hard, Width.Value: 800 } ? floor with { Mats = [new Mat("mat", new(150), new(350), new(350), new(350))] } : floor;

    private Brief DrawBrief()
    {
        var cast = seconds ? 2 + dice.Next(2) : 1 + dice.Next(2);
        var names = new[] { "Ash", "Birch", "Cedar" };
        var (corner, step, nearest) = seconds ? (dice.Next(Bearing.Circle), One(1, 1, 2), dice.Next(3)) : (0, 0, 0);
        return new Brief
        {
            Tempo = new Tempo(One(90, 100, 110)),
            Length = new Length(Chance(30) ? 4 + dice.Next(4) : null, Rows, Chance(50) ? 1 : 2),
            Floor = Laid(new FloorPlan { Width = new Centimetres(One(500, 800)), Depth = new Centimetres(One(700, 800)), MarkX = new Centimetres(250), MarkY = new Centimetres(350), Surface = One(Surface.Matted, Surface.Matted, Surface.Hard) }),
            Hero = new HeroPart { Name = "Hero", Skill = One(Skill.Trained, Skill.Stunt), Lead = One<Side?>(Side.Left, Side.Right, null), Limits = injuries.Next(3) == 0 ? ["left-knee: no bend"] : [] },
            Attackers =
            [
                .. Enumerable.Range(0, cast).Select(a => new AttackerPart
                {
                    Name = names[a],
                    Height = new Centimetres(One(165, 176, 188)),
                    Bearing = seconds ? new Bearing(corner + (step * a)) : new Bearing(One(0, 2, 6, 12, 20) + a),
                    Distance = new Centimetres(seconds ? 100 + (105 * ((a + nearest) % 3)) : One(150, 200, 230)),
                    Entrance = new HalfCounts(One(0, 0, 3)),
                    FallsPerRun = One<int?>(null, 0, 1),
                    SharePercent = One<int?>(null, null, 50),
                    Limits = seconds && injuries.Next(6) == 0 ? ["injured-left-shoulder"] : [],
                }),
            ],
            Cameras = Chance(40) ? [new Camera("A", new Bearing(dice.Next(24)), new Centimetres(500), new Centimetres(150))] : [],
            Moments = Chance(20) ? [new Moment([new MomentMove(One("strike", "finish"), null, One<string?>(null, MomentMove.NoAttack), null)], null, Chance(50) ? new HalfCounts(8) : null)] : [],
            Arc = One(Arc.Free, Arc.Rising, Arc.Even, Arc.TwoPeaks),
            Acts = Acts(),
            Setbacks = One<int?>(null, null, 0, 1),
            Pauses = One<int?>(null, null, 0),
            Safety = Safety.Default with { HeadHitsPerDay = answers.Next(3) == 0 ? Safety.Default.Runs : Safety.Default.HeadHitsPerDay },
            Pace = new Pace(new HalfCounts(One(1, 4, 8)), new HalfCounts(One(0, 1, 4)), HalfCounts.Zero),
            Ending = One(null, null, new Ending([names[0]], null), new Ending([], null), new Ending([.. names.Take(cast)], Chance(50) ? names[cast - 1] : null)),
        };
    }
}
