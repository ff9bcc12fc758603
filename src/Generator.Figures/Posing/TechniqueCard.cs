using Generator.Domain;
using Generator.Figures.Bodies;
using Generator.Figures.Poses;
using Generator.Library;

namespace Generator.Figures.Posing;

/// <summary>Works out the instants of one technique from its shape, the attack that it answers and the reaction that follows.</summary>
internal sealed class TechniqueCard
{
    private readonly PoseBook poses;
    private readonly (double Doer, double Other) statures;
    private readonly Technique technique;
    private readonly Shape shape;
    private readonly Attack? attack;
    private readonly Reaction? reaction;
    private readonly Pose stance;
    private readonly Pose? posture;
    private readonly double distance;
    private readonly IReadOnlyList<Holding> held;
    private readonly IReadOnlyList<Holding> left;
    private readonly Holding? own;
    private readonly Holding? others;
    private readonly SecondPartner? second;

    public TechniqueCard(PoseBook poses, Book book, (double Doer, double Other) statures, Technique technique, Shape shape, double at, Met met)
    {
        // An end that is posed with one reaction is not the end with another.
        this.shape = met.Reaction is { } sold && shape.Reaction is { } posed && !string.Equals(posed, sold.Id, StringComparison.Ordinal) ? shape with { End = null } : shape;
        (this.poses, this.statures, this.technique) = (poses, statures, technique);
        attack = technique.Family is Family.Defence or Family.Setback or Family.Escape || shape.Against is not null
            ? book.Attacks.Where(technique.Meets).OrderByDescending(a => string.Equals(a.Id, met.Attack?.Id, StringComparison.Ordinal))
                .ThenByDescending(a => string.Equals(a.BaseId, shape.Against, StringComparison.Ordinal)).FirstOrDefault()
            : null;
        reaction = met.Reaction ?? ((shape.Reaction ?? (technique.Reactions.Count > 0 ? technique.Reactions[0] : null)) is { } id ? book.Reaction(id) : null);
        stance = poses.Poses[poses.Stances[technique.Starts.Members.First()]];
        posture = technique.HasNoTarget ? null : poses.Poses[poses.Postures[Found(technique, met.Posture)]];
        (held, left) = met is { Held: { } known, Left: { } kept } ? (known, kept) : Grasp.Of(book.Props, technique, attack, reaction);
        (own, others) = (Arming.Of(technique.Prop, byHero: true, held), Arming.Of(attack?.Prop, byHero: false, held));
        distance = shape.Contact.Distance ?? DistanceAt(at);
        second = technique.Two is { } two ? new SecondPartner(poses, statures.Other, two, met) : null;
        Contact = ContactFrame();
        Start = StartFrame();
        End = EndFrame();
        if (second is not null)
        {
            var space = distance * (statures.Doer + statures.Other) / 2;
            Start = second.Into(Start, space, instant: null, asFirst: shape.Start?.Other is not null);
            Contact = second.Into(Contact, space, shape.Contact, asFirst: shape.Contact.Other is not null);
            End = second.Into(End, space, shape.End, asFirst: true);
        }
    }

    public Frame Start { get; }

    public Frame Contact { get; }

    public Frame End { get; }

    /// <summary>Degrees to the left of the first at which the second is; null where there is none.</summary>
    public int? Second => second?.At;

    private bool IsHeld => attack is { IsGrab: true };

    /// <summary>
    /// As far as the technique reaches; where it answers an attack, as far as that does, but no nearer or farther than the technique may be done. Whoever stops an attack on its way in meets it
    /// where they reach.
    /// </summary>
    private double DistanceAt(double at)
    {
        double Reached(double share) => Cards.DistanceOf(technique.Band, share, technique.Kind == ContactKind.NonContact, statures) + Cards.Longer(own, statures);
        if (attack is null || technique.Band.MeetsOnTheWay)
        {
            return Reached(at);
        }

        var comes = Cards.DistanceOf(attack.Contact, at, attack.NonContact, (statures.Other, statures.Doer)) + Cards.Longer(others, statures);
        return own is null ? Math.Clamp(comes, Reached(0), Reached(1)) : Math.Max(Reached(at), comes);
    }

    private Frame StartFrame()
    {
        var instant = Told(shape.Start ?? new Instant());
        var pose = Named(instant.Pose) ?? stance;
        if (shape.Start?.Other is null && IsHeld && technique.Family == Family.Escape)
        {
            var hero = Kinematics.Of(pose, statures.Doer).TurnedLeft(instant.Turn!.Value);
            return Frame("start", held, Marked(new Pair(hero, Attacking(hero, instant.Distance!.Value), 0), hero));
        }

        return Frame("start", held, Staging.Of(pose, Named(instant.Other) ?? posture, instant, statures));
    }

    private Frame ContactFrame()
    {
        var instant = Told(shape.Contact);
        instant = instant with { Aims = Arming.Aims(instant.Aims, own) };
        var pose = Named(instant.Pose) ?? stance;
        if (instant.Other is not null || attack is null)
        {
            return Frame("contact", held, Staging.Of(pose, Named(instant.Other) ?? posture, instant, statures), instant.Aims, []);
        }

        // Who strikes aims at where the hero was; who holds on stays at the hero.
        var before = Kinematics.Of(IsHeld ? pose : stance, statures.Doer).TurnedLeft(instant.Turn!.Value);
        var pair = Staging.Of(pose, null, instant, statures, Attacking(before, instant.Distance!.Value));
        return Frame("contact", held, technique.Family == Family.Setback ? Marked(pair, before) : pair, instant.Aims, AttackAims, before);
    }

    private Frame EndFrame()
    {
        var sell = reaction is null ? null : poses.Of(reaction);
        var keeps = shape.Keeps || sell is { Keeps: true } || reaction is null;
        var instant = Told(shape.End ?? new Instant()) with { Distance = shape.End?.Distance ?? (distance + ((reaction?.Back.Value ?? 0) / 100.0 / statures.Other)) };
        var ended = Named(shape.End?.Pose) ?? (technique.Family is Family.Setback or Family.Pause && technique.EndStance is { } stood ? poses.Poses[poses.Stances[stood]] : null);
        var other = Named(instant.Other) ?? (keeps || sell is null ? null : Sided(poses.Poses[(sell.End ?? sell.Contact).Pose ?? sell.Contact.Pose!]));
        var pair = Staging.Of(ended ?? stance, other, other is null ? instant with { Aims = [], OtherAims = [] } : instant, statures, other is null ? Contact.Attacker : null);
        return Frame(keeps ? "after" : "sell", left, ended is null ? pair with { Doer = Contact.Hero } : pair);
    }

    /// <summary>The posture in which the technique finds the other one: as it is in a fight or ready if it may, else the first that it needs.</summary>
    private static Posture Found(Technique technique, Posture? met) =>
        met is { } posture && technique.Needs.Contains(posture) ? posture
        : technique.Needs.IsEmpty || technique.Needs.Contains(Posture.Ready) ? Posture.Ready : technique.Needs.Members.First();

    /// <summary>The attacker at the contact of the attack, aimed at a hero who stands so.</summary>
    private Figure Attacking(Figure hero, double away)
    {
        var how = poses.Of(attack!) ?? throw new InvalidOperationException($"{attack!.Id} has no shape");
        var mirrors = attack!.Side is { } side && side != how.Side;
        var instant = AttackAt(how);
        var pose = poses.Poses[how.Contact.Pose ?? poses.Postures[Posture.Ready]];
        var mean = (statures.Doer + statures.Other) / 2;
        var attacker = Kinematics.Of(mirrors ? pose.Mirrored : pose, statures.Other).TurnedLeft(180 + (instant.Turn ?? 0)).Moved(new Vec(instant.Aside * mean * -1, 0, away * mean));
        return Clearing.Of(attacker, hero, AttackAims).Figure;
    }

    /// <summary>With where the attack meets the hero as they stood.</summary>
    private Pair Marked(Pair pair, Figure stood) => pair with { Marks = [.. pair.Marks, .. Aiming.Marks(pair.Other!, stood, AttackAims)] };

    /// <summary>What the attack aims, with what is in the hand.</summary>
    private IReadOnlyList<Aim> AttackAims => Arming.Aims(AttackAt(poses.Of(attack!)!).Aims, others);

    private Instant AttackAt(Shape how) => attack!.Side is { } side && side != how.Side ? how.Contact.Mirrored : how.Contact;

    private Instant Told(Instant instant) => instant with { Turn = instant.Turn ?? (Cards.Bearing(technique.Window) is var middle && middle == 0 && second is not null ? second.At / 2.0 : middle), OtherTurn = instant.OtherTurn ?? 0, Distance = instant.Distance ?? distance };

    private Pose? Named(string? name) => name is null ? null : poses.Poses[name];

    /// <summary>Reactions are written for a blow from the hero's right.</summary>
    private Pose Sided(Pose pose) => shape.Side == Side.Left && technique.Side is not null ? pose.Mirrored : pose;

    private Frame Frame(string when, IReadOnlyList<Holding> holds, Pair pair, IReadOnlyList<Aim>? aims = null, IReadOnlyList<Aim>? otherAims = null, Figure? stood = null) =>
        Arming.Of(new Frame(technique.HasNoTarget ? Alone(when) : when, pair.Doer, pair.Other, pair.Missing) { Marks = pair.Marks, Gap = Aiming.Gap(pair.Doer, pair.Other, aims) ?? Aiming.Gap(pair.Other, stood ?? pair.Doer, otherAims) }, holds, aims ?? [], otherAims ?? [], aims is null ? null : Thrown, stood);

    /// <summary>Where nobody is met and nobody sells, the pictures only follow one another.</summary>
    private static string Alone(string when) => when switch
    {
        "start" => "first",
        "contact" => "then",
        _ => "at the end",
    };

    /// <summary>What flies at the contact.</summary>
    private PropNeed? Thrown => new[] { technique.Prop, attack?.Prop }.FirstOrDefault(p => p is { Then: PropFate.Throws });
}
