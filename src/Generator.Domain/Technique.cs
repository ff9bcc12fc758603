namespace Generator.Domain;

/// <summary>One thing the hero does, for one side; the other side comes from <see cref="Mirror"/>.</summary>
public sealed record Technique
{
    /// <summary>With the side at the end for a sided one: <c>outside-block-left</c>.</summary>
    public required string Id { get; init; }

    /// <summary>The record it comes from, without side.</summary>
    public required string BaseId { get; init; }

    public required string Name { get; init; }

    public IReadOnlyList<string> Aliases { get; init; } = [];

    /// <summary>Null when it has no side and is its own mirror.</summary>
    public Side? Side { get; init; }

    public required Family Family { get; init; }

    /// <summary>Stances it can start from.</summary>
    public required StanceSet Starts { get; init; }

    /// <summary>Stance it ends in; null leaves the stance unchanged.</summary>
    public Stance? EndStance { get; init; }

    public HandNeed LeftNeed { get; init; }

    public HandNeed RightNeed { get; init; }

    public BoundSet Bounds { get; init; } = BoundSet.Free;

    public HandEnd LeftEnd { get; init; }

    public HandEnd RightEnd { get; init; }

    /// <summary>Bound that it leaves the hero in; null leaves it unchanged.</summary>
    public Bound? EndBound { get; init; }

    public Window Window { get; init; } = Window.Anywhere;

    /// <summary>How far the hero turns in it.</summary>
    public Turn Turn { get; init; }

    public Carry Carry { get; init; }

    public required Band Band { get; init; }

    /// <summary>How long it takes, 1 to 20 half counts.</summary>
    public required HalfCounts Length { get; init; }

    /// <summary>The fewest seconds in which it may be performed.</summary>
    public required decimal FewestSeconds { get; init; }

    /// <summary>Postures in which the target may be. Empty: it only answers attacks, or has no target.</summary>
    public PostureSet Needs { get; init; }

    /// <summary>Attacks that it answers; for an escape also the grips that it opens.</summary>
    public LineSet Answers { get; init; }

    /// <summary>Whether it can be the hero's answer to an attack: it answers its line, or finds whoever walks in ready.</summary>
    public bool Meets(Attack attack) => attack.IsWalkIn ? Needs.Contains(Posture.Ready) : Answers.Contains(attack.Line);

    /// <summary>It answers nothing but what comes with a prop.</summary>
    public bool IsAgainstPropsAlone => !Answers.IsEmpty && Needs.IsEmpty && Answers.Members.All(l => l.IsArmed);

    /// <summary>An escape that opens the grips whose line it answers.</summary>
    public bool OpensGrips => Family == Family.Escape && !Answers.IsEmpty;

    /// <summary>Whether it can find its target in a posture, as far as the posture alone says: one that it needs, or a grip that it may open.</summary>
    public bool MayFind(Posture posture) => posture != Posture.Out && (Needs.Contains(posture) || (OpensGrips && posture == Posture.Gripping));

    /// <summary>Ids of the reactions that suit it. Empty for what has no target.</summary>
    public IReadOnlyList<string> Reactions { get; init; } = [];

    /// <summary>Weight in the story, 1 (light) to 5 (a peak).</summary>
    public required int Weight { get; init; }

    public Skill HeroSkill { get; init; }

    public Skill AttackerSkill { get; init; }

    public ContactKind Kind { get; init; }

    public Knap Knap { get; init; }

    public Sells Sells { get; init; }

    public Height Height { get; init; }

    /// <summary>What it asks of the body, for limits and wardrobe: <c>left-hand</c>, <c>right-leg</c>, <c>high-kick</c>, <c>jump</c>, <c>spin</c>, <c>kneel</c>, <c>floor</c> …</summary>
    public IReadOnlyList<string> Demands { get; init; } = [];

    /// <summary>What it asks of each part of the hero's body.</summary>
    public Load Load { get; init; }

    /// <summary>What it asks of the partner's body beyond what the reaction does: the joint that is levered, the leg that is swept, the hip that takes a sole.</summary>
    public Load PartnerLoad { get; init; }

    /// <summary>What it asks of those who hold the hero or are held meanwhile, beyond what holding on asks: to bear the hero's weight, to be turned and sell a blow.</summary>
    public Load SupportLoad { get; init; }

    /// <summary>The fall that the hero takes in it, if any.</summary>
    public FallClass HeroFall { get; init; }

    /// <summary>Setbacks, holds, throws and locks draw the target into the band first; after others the target stands at the old distance.</summary>
    public bool Draws { get; init; }

    /// <summary>Works while the hero is bound or held by another, who serves as base.</summary>
    public bool Supported { get; init; }

    /// <summary>Takes a second attacker as well, who shares the reaction; null where it is on one alone.</summary>
    public SecondNeed? Two { get; init; }

    /// <summary>It is for two attackers at once.</summary>
    public bool TakesTwo => Two is not null;

    /// <summary>Walks the held attacker to the target's bearing.</summary>
    public bool CarriesHeld { get; init; }

    /// <summary>A pause that gets the hero up rather than a beat of the story.</summary>
    public bool Recovery { get; init; }

    /// <summary>A hit or a throw: what the audience counts as a contact of the hero's.</summary>
    public bool IsHitOrThrow => IsHit || Family == Family.Throw;

    /// <summary>What makes it a travel move; null for a technique that ends on the mark on which it began.</summary>
    public Travel? Travel { get; init; }

    /// <summary>The thing that it needs on the floor; null for none.</summary>
    public ThingNeed? Uses { get; init; }

    /// <summary>The prop that it is done with; null for none.</summary>
    public PropNeed? Prop { get; init; }

    /// <summary>A pause that is a beat of the story.</summary>
    public bool IsStoryPause => Family == Family.Pause && !Recovery && Travel is null;

    /// <summary>A setback in which the attack ends in a grip on the hero, be it a grab or a tackle that holds on.</summary>
    public bool Seizes => Family == Family.Setback && (EndBound is Bound.Front or Bound.Rear || LeftEnd == HandEnd.Held || RightEnd == HandEnd.Held);

    public string Hazard { get; init; } = string.Empty;

    /// <summary>How it is kept safe.</summary>
    public string Safety { get; init; } = string.Empty;

    /// <summary>
    /// Works while the hero holds somebody other than the target, who stays held: some hand accepts that and leaves it so. Steps back, leaps, jumps, big steps and
    /// turns do not, for whoever is held stands where the hold puts them.
    /// </summary>
    public bool WhileHolding => KeepsHold(LeftNeed, LeftEnd) || KeepsHold(RightNeed, RightEnd);

    /// <summary>A pause without a target.</summary>
    public bool HasNoTarget => Family == Family.Pause && Needs.IsEmpty;

    /// <summary>A miss or contact that the audience should read as a hit.</summary>
    public bool IsHit => Family is Family.Strike or Family.Kick or Family.Finish && Knap != Knap.Breath;

    /// <summary>Beats whoever it is done to, however they sell it: they have reason to stay away for a while.</summary>
    public bool Beats => Family is Family.Strike or Family.Kick or Family.Throw or Family.Lock or Family.Finish;

    /// <summary>A hit at head height, however the one who takes it sells it; a defence is one where it stops whoever comes in with a hit that they sell.</summary>
    public bool IsHeadHit => Height == Height.High && (IsHit || (Family == Family.Defence && Band.MeetsOnTheWay && Knap == Knap.Victim));

    private static bool KeepsHold(HandNeed need, HandEnd end) =>
        need is HandNeed.Any or HandNeed.Unused or HandNeed.HoldingOther && end is HandEnd.Unchanged or HandEnd.Holding;

    /// <summary>This is its id, with or without side.</summary>
    public bool GoesBy(string id) => string.Equals(Id, id, StringComparison.Ordinal) || string.Equals(BaseId, id, StringComparison.Ordinal);
}
