namespace Generator.Domain;

/// <summary>What a technique does to the attacker: how they sell it and where it leaves them.</summary>
public sealed record Reaction
{
    public required string Id { get; init; }

    public required string Name { get; init; }

    public IReadOnlyList<string> Aliases { get; init; } = [];

    /// <summary>The posture that it leaves; null keeps the posture (and the hold) as before.</summary>
    public Posture? Posture { get; init; }

    /// <summary>How long the opening lasts from the end of the move; null while held, gripping or out.</summary>
    public decimal? OpenSeconds { get; init; }

    /// <summary>How far back it carries the attacker; negative draws them nearer.</summary>
    public Centimetres Back { get; init; }

    /// <summary>How far round the clock, 0 to 12 half hours; the technique's carry says which way, 12 is through the mark to the far side.</summary>
    public int Round { get; init; }

    public FallClass Fall { get; init; }

    /// <summary>How the body lies afterwards; null where it does not end lying, or lies on as it lay before.</summary>
    public Lying? Lies { get; init; }

    /// <summary>Seconds from the end of the move until a trained or stunt performer is ready again (fall and get-up included); null while held, gripping or out.</summary>
    public decimal? ReadySeconds { get; init; }

    /// <summary>The same for a novice; null when a novice cannot do it, or while held, gripping or out.</summary>
    public decimal? NoviceReadySeconds { get; init; }

    public Skill Skill { get; init; }

    public SurfaceNeed Surface { get; init; }

    /// <summary>
    /// What it asks of each part of the performer's body. It has no side: where either side may be asked, as the technique has it, both are named. What a limb
    /// that attacks takes from a block belongs to the attack.
    /// </summary>
    public Load Load { get; init; }

    /// <summary>Sends the attacker into a second one, who is off balance too.</summary>
    public bool HitsSecond { get; init; }

    /// <summary>The attacker blocks, slips or catches the blow: it is thrown and does not hit, and gives them no cause to stay away.</summary>
    public bool AnswersBlow { get; init; }

    /// <summary>The thing that it needs on the floor; null for none.</summary>
    public ThingNeed? Uses { get; init; }

    /// <summary>The prop that it is done with; null for none.</summary>
    public PropNeed? Prop { get; init; }

    public string Risk { get; init; } = string.Empty;

    /// <summary>How the performer sells it.</summary>
    public string Sell { get; init; } = string.Empty;

    /// <summary>Takes the attacker off the floor by the agreed exit.</summary>
    public bool RunsOff => Posture == Domain.Posture.Out && Back.Value >= 200;

    /// <summary>Somebody on a knee cannot do it: it ends on their feet without a fall, or brings to the knee who still stands.</summary>
    public bool NeedsFeet => Fall switch
    {
        FallClass.None => Posture is Domain.Posture.Ready or Domain.Posture.Folded or Domain.Posture.HeadBack or Domain.Posture.Turned or Domain.Posture.OffBalance,
        FallClass.ToKnee => Posture == Domain.Posture.Kneeling,
        _ => false,
    };

    /// <summary>Only somebody on a knee can do it: it leaves them there, and nothing brought them down.</summary>
    public bool NeedsKnee => Posture == Domain.Posture.Kneeling && Fall == FallClass.None;

    /// <summary>Can come about where the target is in this posture.</summary>
    /// <param name="posture">Posture before the move; null for one who comes with an attack.</param>
    /// <param name="seizes">The move is a setback in which the attack ends in a grip.</param>
    public bool CanFollow(Posture? posture, bool seizes) => this switch
    {
        { NeedsFeet: true } when posture is { } knee && knee.IsKneeling() => false,
        { NeedsKnee: true } => posture is null || posture.Value.IsKneeling(),
        { AnswersBlow: true } => posture is null or Domain.Posture.Ready or Domain.Posture.OffBalance,
        { Posture: null } => posture is { } held && held.IsControlled(),
        { Posture: Domain.Posture.Gripping } => seizes || posture == Domain.Posture.Gripping,
        { Posture: Domain.Posture.OnBack, Fall: FallClass.None, Back.Value: 0 } => posture == Domain.Posture.OnBack,
        { Posture: Domain.Posture.FaceDown or Domain.Posture.Pinned, Fall: FallClass.None } => posture is { } down && down.IsDown(),
        _ => true,
    };

    /// <summary>Folds them, throws their head back or brings them down, whatever did it.</summary>
    public bool Beats => Fall != FallClass.None || Posture is { } posture && (posture is Domain.Posture.Folded or Domain.Posture.HeadBack || posture.IsDown());

    /// <summary>Ends stretched out on the floor after a fall, so that it must be said how.</summary>
    public bool EndsLying => Fall is not (FallClass.None or FallClass.ToKnee)
        && Posture is Domain.Posture.OnBack or Domain.Posture.FaceDown or Domain.Posture.Pinned or Domain.Posture.Out;

    /// <summary>Carries the attacker somewhere, so that the way there must be clear.</summary>
    public bool Sends => Back.Value >= 30 || Round >= 2 || Fall is not (FallClass.None or FallClass.ToKnee);
}
