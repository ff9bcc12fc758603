namespace Generator.Domain;

/// <summary>
/// A set of attack lines: for each side of the hero one bit a kind, in the order of <see cref="LineKind"/>. Not one number of 128 bits: code that touches a record
/// which holds one is never compiled ahead of time, and nearly all of ours touches a technique.
/// </summary>
public readonly record struct LineSet(ulong Left, ulong Centre, ulong Right)
{
    public static readonly LineSet Empty;

    public static LineSet Of(IEnumerable<AttackLine> lines)
    {
        var set = Empty;
        foreach (var line in lines)
        {
            var bit = 1UL << (int)line.Kind;
            set = line.Side switch
            {
                LineSide.Left => set with { Left = set.Left | bit },
                LineSide.Centre => set with { Centre = set.Centre | bit },
                _ => set with { Right = set.Right | bit },
            };
        }

        return set;
    }

    public bool IsEmpty => (Left | Centre | Right) == 0;

    public bool Contains(AttackLine line) => ((line.Side switch { LineSide.Left => Left, LineSide.Centre => Centre, _ => Right } >> (int)line.Kind) & 1) != 0;

    public IEnumerable<AttackLine> Members => Enumerable.Range(0, AttackLine.Count).Select(AttackLine.FromIndex).Where(Contains);

    public LineSet Mirrored => new(Right, Centre, Left);

    /// <summary>The members; the text of a record would print its mirror, and that its own, for ever.</summary>
    public override string ToString() => string.Join(", ", Members);
}
