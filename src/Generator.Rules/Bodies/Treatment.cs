using Generator.Domain;

namespace Generator.Rules.Bodies;

/// <summary>What a move is to one attacker whom it concerns, as far as it says where they are and when. Replay reads it off a step, the solver off a model's values.</summary>
public readonly record struct Treatment
{
    /// <summary>Number of the move, from 0.</summary>
    public required int Move { get; init; }

    public required int Attacker { get; init; }

    /// <summary>Whose move it is; the second one of a move reacts where they stand.</summary>
    public required bool IsTarget { get; init; }

    /// <summary>Null for an attack that nothing answers.</summary>
    public required Technique? Technique { get; init; }

    /// <summary>The attack of the move; null for a follow-up.</summary>
    public required Attack? Attack { get; init; }

    /// <summary>Position in the book; −1 for none.</summary>
    public required int Reaction { get; init; }

    /// <summary>In half counts.</summary>
    public required int Start { get; init; }

    public required int End { get; init; }

    /// <summary>Bearing in half hours and distance in centimetres before the move.</summary>
    public required (int Bearing, int Distance) Stands { get; init; }

    /// <summary>The same where an attack lands.</summary>
    public required (int Bearing, int Distance) Meets { get; init; }

    /// <summary>The same after the move.</summary>
    public required (int Bearing, int Distance) Ends { get; init; }

    /// <summary>The mark from which the first two are seen.</summary>
    public Place Origin { get; init; }

    /// <summary>The mark from which the last is.</summary>
    public Place EndsFrom { get; init; }

    /// <summary>Where they are before the move to the millimetre; null where that is on a bearing.</summary>
    public Place? Exactly { get; init; }

    /// <summary>Moment from which they may set off.</summary>
    public required int Soonest { get; init; }

    /// <summary>As the move leaves them.</summary>
    public required Posture Posture { get; init; }

    /// <summary>They have left the floor after it.</summary>
    public required bool Gone { get; init; }

    /// <summary>They lay when it began to act on them.</summary>
    public required bool Lay { get; init; }

    /// <summary>Throws an attack in this move.</summary>
    public bool ComesIn => IsTarget && Attack is not null;

    /// <summary>Moment at which the technique begins to act on them.</summary>
    public int Taken(Scene scene) => Attack is null ? Start : Contact(scene);

    /// <summary>Moment at which the attack lands.</summary>
    public int Contact(Scene scene) => Start + scene.Settle.ContactAfter.Value;

    /// <summary>
    /// Their ways in numbers. Whoever attacks sets off as late as they can and no sooner than they may; whoever is sent takes what the technique leaves them and half a count more, and longer
    /// where nobody is so fast.
    /// </summary>
    public Motion Motion(Scene scene)
    {
        var round = ComesIn ? new Bearing(Stands.Bearing).To(new Bearing(Meets.Bearing)).HalfHours : 0;
        var walksRound = Math.Abs(round) * scene.Settle.WalkRoundPerHalfHour.Value;
        var contact = Contact(scene);
        var least = ComesIn ? scene.ComingIn(Attacker, Attack!, Stands.Distance, Math.Abs(round), Meets.Distance) : 0;
        var leaves = Math.Min(contact, Math.Max(contact - least, Soonest));
        var meets = ComesIn ? Meets : Stands;
        var way = new Motion
        {
            Move = Move,
            Stands = Stands,
            Origin = Origin,
            EndsFrom = EndsFrom,
            Exactly = Exactly,
            ComesIn = ComesIn,
            Leaves = leaves,
            Round = round,
            Rounded = Math.Min(contact, leaves + walksRound),
            Contact = contact,
            Meets = meets,
        };
        return Technique is { } technique && Reaction >= 0 ? Sent(scene, technique, scene.Book.Reactions[Reaction], way) : way;
    }

    /// <summary>How a reaction takes somebody where it does.</summary>
    public static LegKind KindOf(Technique technique, Reaction reaction) =>
        !reaction.Sends ? LegKind.Shifts : technique.Kind == ContactKind.Partnered ? LegKind.Guided : LegKind.Sent;

    /// <summary>
    /// Half counts from the end of the move for which somebody lies, without the linger: who stays down longer sits up meanwhile. <see cref="Motion.Never"/> for who does not lie,
    /// <see cref="Motion.ForEver"/> for who is held there or out.
    /// </summary>
    /// <param name="posture">As the reaction leaves them.</param>
    /// <param name="reaction">The reaction.</param>
    /// <param name="lay">They lay before.</param>
    /// <param name="ready">Half counts after which they would be ready again.</param>
    public static int LiesFor(Posture posture, Reaction reaction, bool lay, int ready) => posture switch
    {
        Posture.FaceDown or Posture.OnBack => ready,
        Posture.Pinned => Bodies.Motion.ForEver,
        Posture.Out when reaction.Fall is not (FallClass.None or FallClass.ToKnee) || (lay && reaction.Fall == FallClass.None && !reaction.RunsOff) => Bodies.Motion.ForEver,
        _ => Bodies.Motion.Never,
    };

    private Motion Sent(Scene scene, Technique technique, Reaction reaction, Motion way)
    {
        var taken = Taken(scene);
        var ends = Math.Max(End, Contact(scene));
        var until = IsTarget || technique.TakesTwo ? LiesFor(Posture, reaction, Lay, scene.ReadyAfter(Reaction, Attacker)) : Bodies.Motion.Never;
        return (way with
        {
            Reacts = true,
            Taken = taken,
            Lands = reaction.Sends ? ends + 1 : ends,
            Ends = Ends,
            SentRound = IsTarget ? Replaying.Effects.CarriedRound(technique.Carry, reaction.Round, Attack is { Line.Side: LineSide.Right }) : 0,
            Kind = EndsFrom != Origin ? LegKind.Led : Ends == way.Meets && reaction.Fall == FallClass.None ? LegKind.Rests : Lay && reaction.Fall == FallClass.None ? LegKind.Led : KindOf(technique, reaction),
            Gone = Gone,
            LiesUntil = until is Bodies.Motion.Never or Bodies.Motion.ForEver ? until : End + until,
            LiesAsBefore = reaction.Fall == FallClass.None,
            Across = reaction.Lies == Lying.Across,
            Axis = scene.AxisOf(Attacker),
        }).NoFaster(scene);
    }
}
