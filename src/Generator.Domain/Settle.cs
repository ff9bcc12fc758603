namespace Generator.Domain;

/// <summary>
/// What may happen between two moves, and the floor distances that the rules measure with (<c>settle.json</c>).
/// Common practice, no source, unless a property says otherwise.
/// </summary>
public sealed record Settle
{
    /// <summary>
    /// Farthest turn in half hours for a gap of 0, 1, 2 … half counts; longer gaps allow the last entry. The first is part of the technique itself, at every
    /// tempo: hips and front foot turn with it.
    /// </summary>
    public IReadOnlyList<int> TurnByGap { get; init; } = [2, 2, 6, 6, 12];

    /// <summary>Farthest turn in half hours while a wrist of the hero is held; none while the body is bound.</summary>
    public int TurnWhileHeld { get; init; } = 2;

    /// <summary>Fastest turn between two moves, in degrees a second: half round in 0.9 s. A fast paced half turn takes 1.5 s (Khobkhun, Hollands and
    /// Richards 2021, Sensors 21:2827; from memory); techniques that turn half round take 0.7 to 0.85 s (common practice).</summary>
    public int TurnDegreesPerSecond { get; init; } = 200;

    /// <summary>Fewest seconds that each half count of these settings and of a change of stance lasts: where a tempo makes half counts shorter, more of
    /// them are needed.</summary>
    public decimal FewestHalfCount { get; init; } = 0.2m;

    /// <summary>Half counts after which an out hand is back in guard.</summary>
    public HalfCounts HandBack { get; init; } = new(1);

    /// <summary>Half counts from the start of a technique to the contact of the attack that it answers.</summary>
    public HalfCounts ContactAfter { get; init; } = new(2);

    /// <summary>Half counts that walking round the clock takes, per half hour.</summary>
    public HalfCounts WalkRoundPerHalfHour { get; init; } = new(2);

    /// <summary>
    /// Most half counts before count 1 in which attackers are already on their way to the first blow: the four counts of the count-in, on whose clicks they set off.
    /// </summary>
    public HalfCounts LeadInMost { get; init; } = new(8);

    /// <summary>
    /// Farthest that the hero goes along with a partner who gives way within an exchange: about the step in of one blow. A follow-up may use it besides
    /// its own step; whoever opens the next exchange finds the hero back on the mark.
    /// </summary>
    public Centimetres FollowMost { get; init; } = new(40);

    /// <summary>
    /// Most half counts by which somebody's return is put off who was neither hit, thrown, locked nor brought down: time to step out and circle, no more. A beaten one lingers
    /// as long as the brief allows.
    /// </summary>
    public HalfCounts LingerUnhurt { get; init; } = new(4);

    /// <summary>Distance at which an attacker can strike.</summary>
    public Centimetres StrikingDistance { get; init; } = new(90);

    /// <summary>Least distance between two standing attackers.</summary>
    public Centimetres Spacing { get; init; } = new(100);

    /// <summary>Room from middle to middle between two who are upright, and past whom somebody is sent by a technique that both do together.</summary>
    public Centimetres LaneBeside { get; init; } = new(60);

    /// <summary>The same beside the way of one who staggers or falls without being guided.</summary>
    public Centimetres LaneBesideFall { get; init; } = new(80);

    /// <summary>Half of the room that a body takes up, upright or lying: men's shoulders are 51 cm broad over the deltoids (ANSUR II 2012, 0.291 of a stature of 1.756 m).</summary>
    public Centimetres BodyRadius { get; init; } = new(25);

    /// <summary>The fastest that somebody who is sent goes, in centimetres a second: the fastest walk, men in their twenties 253.3 (Bohannon 1997, Age and Ageing 26:15).</summary>
    public Centimetres FastestSent { get; init; } = new(253);

    /// <summary>Distance from floor edge and obstacles.</summary>
    public Centimetres EdgeClearance { get; init; } = new(30);

    /// <summary>How far off the facing the hero still sees, in half hours to either side.</summary>
    public int SightHalfAngle { get; init; } = 4;

    /// <summary>Reaction time after a cue: hands brought up in front, 0.53 s (Robinovitch et al. 2005, J Gerontol A 60:1553).</summary>
    public decimal ReactionSeconds { get; init; } = 0.53m;

    /// <summary>How far round from the landing place a second attacker may stand to be bumped into or taken along, in half hours.</summary>
    public int SecondWithin { get; init; } = 2;

    /// <summary>What each piece of wardrobe forbids: its name in a brief, and the demands (<see cref="Demand"/>) it rules out.</summary>
    public IReadOnlyDictionary<string, IReadOnlyList<string>> Wardrobe { get; init; } = new Dictionary<string, IReadOnlyList<string>>(StringComparer.Ordinal);

    /// <summary>The same settings where half counts are as short as this tempo makes them.</summary>
    public Settle At(Tempo tempo) => this with
    {
        TurnByGap = TurnsAt(tempo),
        HandBack = Lasting(HandBack, tempo),
        ContactAfter = Lasting(ContactAfter, tempo),
        WalkRoundPerHalfHour = Lasting(WalkRoundPerHalfHour, tempo),
    };

    /// <summary>What so many half counts at a tempo that leaves time enough become at this one.</summary>
    public HalfCounts Lasting(HalfCounts own, Tempo tempo) => tempo.Lasting(own, own.Value * FewestHalfCount);

    /// <summary>Largest turn that a gap allows to a hero whose wrists and body are free; none while moves overlap.</summary>
    public int TurnFor(int gap) => gap < 0 ? 0 : TurnByGap[Math.Min(gap, TurnByGap.Count - 1)];

    private List<int> TurnsAt(Tempo tempo)
    {
        var turns = new List<int>();
        do
        {
            var degrees = (int)(tempo.SecondsIn(new HalfCounts(turns.Count)) * TurnDegreesPerSecond);
            turns.Add(Math.Max(TurnByGap[0], Math.Min(TurnFor(turns.Count), degrees / Bearing.DegreesPerHalfHour)));
        }
        while (turns.Count < TurnByGap.Count || turns[^1] < TurnByGap[^1]);
        return turns;
    }
}
