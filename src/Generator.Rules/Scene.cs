using System.Collections.Concurrent;
using Generator.Domain;
using Generator.Library;
using Generator.Rules.Bodies;
using Generator.Rules.Replaying;

namespace Generator.Rules;

/// <summary>
/// A brief and a library worked out for these bodies, this tempo and this floor: every band in centimetres, every recovery in half counts.
/// Built once, read by Replay, rules and solver alike.
/// </summary>
public sealed class Scene
{
    /// <summary>Shoulder to fist as a share of stature (ANSUR II 2012, acromion to grip centre, men 0.390, women 0.386).</summary>
    public const decimal ArmShare = 0.39m;

    /// <summary>Hip to ankle as a share of stature (Drillis and Contini 1966, 0.491).</summary>
    public const decimal LegShare = 0.49m;

    /// <summary>Of a hundred blows that could be answered those that are, where the brief says nothing: now and then, so that the hero is not always right. Common practice, no source.</summary>
    private const int UsuallyAnswered = 10;

    private readonly Reach[,] techniqueReach;
    private readonly Reach[,] attackReach;
    private readonly int[] open;
    private readonly int[] perHalfCounts;
    private readonly int[,] ready;
    private readonly bool[] judged;
    private readonly int[] answered;
    private readonly ConcurrentDictionary<(int Who, string Part), Ability> hurt = new();

    public Scene(Brief brief, Book book)
        : this(brief, book, null)
    {
    }

    private Scene(Brief brief, Book book, Scene? hero)
    {
        Brief = brief;
        Pulse = brief.Pulse;
        book = book.At(brief.Tempo);
        Book = book;
        Cast = brief.Attackers.Count;
        Floor = new FloorReach(brief.Floor, book.Settle, brief.Cameras);
        Entries = new Entries(brief.Floor, Floor, book.Settle);
        Marks = brief.Travels || brief.Ally is not null ? new Marks(brief, book.Settle, Floor) : Marks.One(Floor);
        Things = FloorThings.Of(brief, book);
        Props = new HandProps(brief, book);
        Mats = new FloorMats(brief, book.Settle);
        Able = new Ability(brief, book, Things, Props, Mats);
        Plan = ActPlan.Of(brief);
        Likings = new Likings(brief, book);
        Combinations = new CombinationForms(brief, book, Able, Likings);
        judged = [.. Enum.GetValues<FightRule>().Select(r => brief.Judged?.Contains(r) ?? (brief.Acts is { Count: > 0 } || IsAskedFor(r)))];
        answered = [.. brief.Attackers.Select(a => Math.Max(brief.AnsweredPercent ?? UsuallyAnswered, book.MannerOf(a)?.AnsweredPercent ?? 0))];
        UsuallyAnsweredPercent = answered.Length == 0 ? 0 : (int)answered.Average();
        techniqueReach = new Reach[book.Techniques.Count, Cast];
        attackReach = new Reach[book.Attacks.Count, Cast];
        perHalfCounts = [.. brief.Attackers.Select(a => 30 * a.Speed)];
        open = [.. book.Reactions.Select(r => r.OpenSeconds is { } s ? brief.Tempo.AtLeast(s).Value : 0)];
        ready = new int[book.Reactions.Count, Cast];
        for (var a = 0; a < Cast; a++)
        {
            for (var t = 0; t < book.Techniques.Count; t++)
            {
                techniqueReach[t, a] = ReachOf(book.Techniques[t], brief.Attackers[a]);
            }

            for (var k = 0; k < book.Attacks.Count; k++)
            {
                attackReach[k, a] = ReachOf(book.Attacks[k], brief.Attackers[a]);
            }

            for (var r = 0; r < book.Reactions.Count; r++)
            {
                ready[r, a] = ReadyOf(book.Reactions[r], brief.Attackers[a]);
            }
        }

        IsAllys = hero is not null;
        Other = hero ?? (brief.Ally is { } ally ? new Scene(brief with { Hero = ally.Part, Ally = ally with { Part = brief.Hero } }, book, this) : null);
    }

    public Brief Brief { get; }

    /// <summary>The same fight as it is for the other of hero and ally: the ally stands where the hero does in this one, and the hero where the ally does. Null where there is no ally.</summary>
    public Scene? Other { get; }

    /// <summary>This is the fight as it is for the ally.</summary>
    public bool IsAllys { get; }

    /// <summary>The hero, or the ally in a fight with one: whoever's mark it is.</summary>
    public HeroPart OnMark(int mark) => Brief.Ally is { } ally && (mark == 1) != IsAllys ? ally.Part : Brief.Hero;

    /// <summary>How fast the counts go by.</summary>
    public Pulse Pulse { get; }

    /// <summary>The library at the brief's tempo: lengths of techniques and attacks are what they last there.</summary>
    public Book Book { get; }

    public Settle Settle => Book.Settle;

    /// <summary>Number of attackers.</summary>
    public int Cast { get; }

    /// <summary>The floor as it lies round the first mark.</summary>
    public FloorReach Floor { get; }

    /// <summary>The marks between which the hero travels.</summary>
    public Marks Marks { get; }

    /// <summary>How those who are not in from the start come onto the floor.</summary>
    public Entries Entries { get; }

    /// <summary>Things of the floor that moves may use.</summary>
    public FloorThings Things { get; }

    /// <summary>Where falls may land on a hard floor.</summary>
    public FloorMats Mats { get; }

    /// <summary>What is held in the hand, or lies ready for it.</summary>
    public HandProps Props { get; }

    public Ability Able { get; }

    /// <summary>The same while somebody plays a hurt part of the body, as if the brief said so from the start.</summary>
    /// <param name="who">Number of the attacker; −1 for the hero.</param>
    /// <param name="part">The word for the part.</param>
    public Ability AbleWhileHurt(int who, string part) => hurt.GetOrAdd((who, part), k => new Ability(WhileHurt(k.Who, Limit.Hurting(k.Part)), Book, Things, Props, Mats));

    /// <summary>Distance band of a technique between the hero and one attacker.</summary>
    public Reach TechniqueReach(int technique, int attacker) => techniqueReach[technique, attacker];

    /// <summary>Distance band of an attack by one attacker at contact.</summary>
    public Reach AttackReach(int attack, int attacker) => attackReach[attack, attacker];

    /// <summary>Where an attacker stops for an attack: at striking distance, or at the nearest end of the attack's band.</summary>
    public int StopDistance(int attack, int attacker)
    {
        var reach = attackReach[attack, attacker];
        return Math.Clamp(Settle.StrikingDistance.Value, reach.Near, Math.Max(reach.Near, reach.Far));
    }

    /// <summary>How far away an attacker is when the attack lands (technique −1: nothing answers it); a stop-hit meets them no nearer than its band, and somebody put between keeps them farther out.</summary>
    public int ContactDistance(int attack, int technique, int attacker)
    {
        var stop = StopDistance(attack, attacker);
        if (technique < 0)
        {
            return stop;
        }

        var band = Book.Techniques[technique].Band;
        return Math.Max(stop + band.Behind.Value, band.MeetsOnTheWay ? techniqueReach[technique, attacker].Near : 0);
    }

    /// <summary>Half counts for which a reaction leaves an opening.</summary>
    public int OpenFor(int reaction) => open[reaction];

    /// <summary>
    /// Half counts from the end of the move until this attacker is ready again, a blow included that may land then: fall, get-up and, after a fall or from the floor, the brief's margin, in which the blow
    /// begins, so that it is no shorter than that.
    /// </summary>
    public int ReadyAfter(int reaction, int attacker) => ready[reaction, attacker];

    /// <summary>
    /// Latest start of the first move where the brief says how long the fight is: no later after the first attacker can be there than a gap may be long. Else
    /// unlimited, for what is written may be a part of a longer fight.
    /// </summary>
    /// <param name="opens">How far from the mark each attacker opens, in centimetres.</param>
    public int LatestFirst(Func<int, int> opens) => Brief.Length is null || Cast == 0
        ? int.MaxValue
        : Pace.DeadAirBreaks.Value + Brief.Attackers.Select((a, i) => (a.Entrance?.Value ?? 0) + WalkTime(i, opens(i))).Min();

    /// <summary>The same wherever they open.</summary>
    public int LatestOfAll => LatestFirst(_ => Enumerable.Range(0, Bearing.Circle).Max(b => Floor[b]));

    /// <summary>Half counts by which a move may let its target linger: as many as the brief allows after a hit, a throw, a lock or a fall, few after a mere block, theirs or the hero's.</summary>
    public int LongestLinger(in Row row)
    {
        var reaction = row.Reaction < 0 ? null : Book.Reactions[row.Reaction];
        var beaten = reaction is not { AnswersBlow: true } && ((row.Technique >= 0 && Book.Techniques[row.Technique].Beats) || reaction is { Beats: true });
        return beaten ? Brief.Pace.Linger.Value : Math.Min(Brief.Pace.Linger.Value, Settle.LingerUnhurt.Value);
    }

    /// <summary>The acts asked for, laid over the length; null when there are none to judge.</summary>
    public ActPlan? Plan { get; }

    /// <summary>The fight is judged by this rule.</summary>
    public bool Judges(FightRule rule) => judged[(int)rule];

    /// <summary>Manners and wishes.</summary>
    public Likings Likings { get; }

    /// <summary>Attacks that go together, and whose they are.</summary>
    public CombinationForms Combinations { get; }

    /// <summary>Of a hundred blows that an attacker could block, slip or catch those that a draft lets them: what the brief says, or their manner where that is more.</summary>
    public int AnsweredPercent(int attacker) => answered[attacker];

    /// <summary>The same over all attackers.</summary>
    public int UsuallyAnsweredPercent { get; }

    /// <summary>Half counts that an attacker needs from a distance to striking distance, rounded up.</summary>
    public int WalkTime(int attacker, int distance) => WayIn(attacker, distance, Settle.StrikingDistance.Value);

    /// <summary>The same to a nearer place, where an attack lands: threat times leave the last step to the attack, but nobody goes it faster for that.</summary>
    public int WayIn(int attacker, int distance, int meets)
    {
        var way = distance - Math.Min(meets, Settle.StrikingDistance.Value);
        var perHalfCount = perHalfCounts[attacker];
        return way <= 0 ? 0 : ((way * Brief.Tempo.CountsPerMinute) + perHalfCount - 1) / perHalfCount;
    }

    /// <summary>Half counts before the contact at which an attacker sets off for a blow if they can: for the way, round the clock first, or for as long as the attack lasts.</summary>
    /// <param name="attacker">Their number.</param>
    /// <param name="attack">What they throw.</param>
    /// <param name="distance">How far from the mark they stand, in centimetres.</param>
    /// <param name="round">Half hours that they walk round, 0 to 12.</param>
    /// <param name="meets">How far from the mark the blow lands, in centimetres.</param>
    public int ComingIn(int attacker, Attack attack, int distance, int round, int meets) =>
        Math.Max(WayIn(attacker, distance, meets) + (round * Settle.WalkRoundPerHalfHour.Value), attack.Length.Value);

    /// <summary>Half counts that an attacker needs for a way in centimetres on which they walk, not rounded.</summary>
    public double HalfCounts(int attacker, double way) => way * Brief.Tempo.CountsPerMinute / (30 * Brief.Attackers[attacker].Speed);

    /// <summary>Half counts that anybody needs for a way on which they are sent, at the fastest that people go.</summary>
    public int HalfCountsFor(int way)
    {
        var perHalfCount = 30 * Settle.FastestSent.Value;
        return ((way * Brief.Tempo.CountsPerMinute) + perHalfCount - 1) / perHalfCount;
    }

    /// <summary>Half counts from the start of a technique to its end: a travel move takes as long as its way besides, from the contact on where an attack brings it about.</summary>
    /// <param name="technique">The technique.</param>
    /// <param name="way">Of the hero to another mark, in centimetres; 0 for who stays.</param>
    /// <param name="meetsAttack">There is an attack.</param>
    public int Lasts(Technique technique, int way, bool meetsAttack) => technique.Travel is { } travel && way > 0
        ? Math.Max(technique.Length.Value, Brief.Tempo.AtLeast(travel.SecondsFor(new Centimetres(way))).Value + (meetsAttack ? Settle.ContactAfter.Value : 0))
        : technique.Length.Value;

    /// <summary>Whoever ends a move free of the hero ends no nearer to the mark than two bodies need, upright or lying: they give ground, or roll clear. Centimetres.</summary>
    public int NearestFor(Posture posture) => posture.IsTied() ? 0 : 2 * Settle.BodyRadius.Value;

    /// <summary>From the middle of the feet to the middle of the head of an attacker who lies, in centimetres: the stature less the room round either end.</summary>
    public int AxisOf(int attacker) => Brief.Attackers[attacker].Height.Value - (2 * Settle.BodyRadius.Value);

    /// <summary>Length of a performer's arm, shoulder to fist, in centimetres.</summary>
    public static decimal ArmOf(Performer performer) => performer.Arm?.Value ?? performer.Height.Value * ArmShare;

    /// <summary>Length of a performer's leg, hip to ankle, in centimetres.</summary>
    public static decimal LegOf(Performer performer) => performer.Leg?.Value ?? performer.Height.Value * LegShare;

    private Brief WhileHurt(int who, string limit) => who < 0
        ? Brief with { Hero = Brief.Hero with { Limits = [.. Brief.Hero.Limits, limit] } }
        : Brief with { Attackers = [.. Brief.Attackers.Select((a, i) => i == who ? a with { Limits = [.. a.Limits, limit] } : a)] };

    /// <summary>The brief itself asks for what the rule judges.</summary>
    private bool IsAskedFor(FightRule rule) =>
        (rule == FightRule.Manner && (Likings.HaveManner || Brief.Avoid.Count + Brief.Favour.Count > 0)) || (rule == FightRule.Echo && Brief.Signature is not null);

    private static decimal LimbOf(Performer performer, Limb limb) => limb == Limb.Arm ? ArmOf(performer) : LegOf(performer);

    private static Reach ToReach(Band band, decimal limb, (int Near, int Far) longer) => new(
        (int)Math.Ceiling(band.From * limb) + longer.Near,
        (int)Math.Floor(band.To * limb) + longer.Far,
        band.StepIn.Value,
        band.StepOut.Value);

    private Reach ReachOf(Technique technique, AttackerPart attacker)
    {
        var own = LimbOf(Brief.Hero, technique.Band.Limb);
        var limb = technique.Kind == ContactKind.NonContact ? Math.Max(own, LimbOf(attacker, technique.Band.Limb)) : own;
        return ToReach(technique.Band, limb, Props.Longer(technique.Prop, PropHolder.Hero));
    }

    private Reach ReachOf(Attack attack, AttackerPart attacker)
    {
        var own = LimbOf(attacker, attack.Contact.Limb);
        var limb = attack.NonContact ? Math.Max(own, LimbOf(Brief.Hero, attack.Contact.Limb)) : own;
        return ToReach(attack.Contact, limb, Props.Longer(attack.Prop, attack.Prop?.Holder ?? PropHolder.Attacker));
    }

    private int ReadyOf(Reaction reaction, AttackerPart attacker)
    {
        if (reaction.ReadySeconds is not { } trained)
        {
            return 0;
        }

        var seconds = attacker.Skill == Skill.Novice ? reaction.NoviceReadySeconds ?? trained : trained;
        var goesDown = reaction.Fall != FallClass.None || reaction.Posture is { } posture && posture.IsDown();
        return Brief.Tempo.AtLeast(seconds).Value + (goesDown ? Math.Max(Brief.Safety.Margin.Value, Settle.ContactAfter.Value) : 0);
    }
}
