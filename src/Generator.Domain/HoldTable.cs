namespace Generator.Domain;

/// <summary>
/// What holds and grips ask of bodies while the hero works on somebody else (<c>holds.json</c>). What taking one asks stands with the technique, the attack and the
/// reaction. Common practice, no source.
/// </summary>
public sealed class HoldTable
{
    public static readonly HoldTable Empty = new(default, new Dictionary<Posture, Load>(), []);

    private readonly Load leftHand;
    private readonly IReadOnlyDictionary<Posture, Load> held;
    private readonly IReadOnlyList<GripLoad> grips;

    /// <param name="leftHand">Asked of a hero who holds somebody with the left hand.</param>
    /// <param name="held">Asked of an attacker in each posture in which the hero holds them.</param>
    /// <param name="grips">Grips on the hero; those with a side stand for the other side as well.</param>
    public HoldTable(Load leftHand, IReadOnlyDictionary<Posture, Load> held, IReadOnlyList<GripLoad> grips)
    {
        this.leftHand = leftHand;
        this.held = held;
        this.grips = [.. grips.Concat(grips.Select(g => g.Mirrored)).DistinctBy(g => g.Line)];
    }

    /// <summary>Asked of a hero who goes on holding somebody with this hand.</summary>
    public Load OfHand(Side hand) => hand == Side.Left ? leftHand : leftHand.Mirrored;

    /// <summary>Asked of an attacker whom the hero goes on holding.</summary>
    public Load OfHeld(Posture posture) => held.GetValueOrDefault(posture);

    /// <summary>Asked by a grip that lasts; along a line that no grip has, what all grips of its kind ask together.</summary>
    public GripLoad OfGrip(AttackLine line) =>
        grips.FirstOrDefault(g => g.Line == line)
        ?? grips.Where(g => g.Line.Kind == line.Kind).Aggregate(new GripLoad(line, default, default), (all, one) => new(line, all.Load.Or(one.Load), all.HeroLoad.Or(one.HeroLoad)));
}
