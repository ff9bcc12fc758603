namespace Generator.Domain;

/// <summary>What the coordinator asks for. Only attackers and length are required; the rest has defaults.</summary>
public sealed record Brief
{
    public string Title { get; init; } = "Untitled fight";

    /// <summary>The tempo by which lengths are worked out: the only one, or the fastest of the passages, so that whatever is done in a slower one has time enough.</summary>
    public Tempo Tempo { get; init; } = Tempo.Default;

    /// <summary>Passages, holds and accents; null where one tempo lasts throughout and nothing else is asked of the music.</summary>
    public Music? Music { get; init; }

    /// <summary>How fast the counts go by.</summary>
    public Pulse Pulse => new(Tempo, Music);

    /// <summary>The same at one tempo throughout.</summary>
    public Brief AtTempo(Tempo tempo) => this with { Tempo = tempo, Music = Music is null ? null : Music with { Passages = [] } };

    /// <summary>Null only for a routine that was written without a brief: its length is then not judged.</summary>
    public Length? Length { get; init; }

    public FloorPlan Floor { get; init; } = new();

    /// <summary>The marks between which the hero travels, the first where the fight begins; none: the floor's own is the only one.</summary>
    public IReadOnlyList<HeroMark> Marks { get; init; } = [];

    /// <summary>The hero works from several marks.</summary>
    public bool Travels => Marks.Count > 1;

    public HeroPart Hero { get; init; } = new() { Name = "Hero", Skill = Skill.Stunt };

    /// <summary>A second hero beside the first; null for none. A fight with one has neither several marks nor props.</summary>
    public Ally? Ally { get; init; }

    /// <summary>1 to 8, in the order A1, A2 …</summary>
    public required IReadOnlyList<AttackerPart> Attackers { get; init; }

    public IReadOnlyList<Camera> Cameras { get; init; } = [];

    /// <summary>What is held in the hand or lies ready to be taken up, at most <see cref="PropPart.Most"/>.</summary>
    public IReadOnlyList<PropPart> Props { get; init; } = [];

    public IReadOnlyList<Moment> Moments { get; init; } = [];

    /// <summary>Id of the style that was asked for; null for none. What it sets stands in the other fields already: this is only how papers call the fight.</summary>
    public string? Style { get; init; }

    public Arc Arc { get; init; } = Arc.Free;

    /// <summary>The acts of the story; none: the fight is not judged as one. Null: a draft that is long enough gets three, an audit judges none.</summary>
    public IReadOnlyList<Act>? Acts { get; init; }

    /// <summary>By which rules of a good fight it is judged; null: by all of them where it has acts, else by those of which it asks something itself.</summary>
    public IReadOnlyList<FightRule>? Judged { get; init; }

    /// <summary>What should not be seen: ids of techniques and attacks, families, kinds of attack.</summary>
    public IReadOnlyList<string> Avoid { get; init; } = [];

    /// <summary>What should be seen, each at least once; the same words.</summary>
    public IReadOnlyList<string> Favour { get; init; } = [];

    /// <summary>Id of a technique or an attack, with or without side, that should return and end otherwise; null for none.</summary>
    public string? Signature { get; init; }

    /// <summary>How many setbacks are asked for; null does not judge them.</summary>
    public int? Setbacks { get; init; }

    /// <summary>How many pauses (beats of the story) are asked for; null does not judge them.</summary>
    public int? Pauses { get; init; }

    /// <summary>Of a hundred blows of the hero those that attackers should block, slip or catch, 0 to 50; null leaves a draft its own measure. An audit does not judge it.</summary>
    public int? AnsweredPercent { get; init; }

    public Pace Pace { get; init; } = Pace.Default;

    public Safety Safety { get; init; } = Safety.Default;

    /// <summary>Null: a draft puts everybody out; an audit asks nothing of the ending.</summary>
    public Ending? Ending { get; init; }
}
