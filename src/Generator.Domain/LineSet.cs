namespace Generator.Domain;

/// <summary>A set of attack lines, one bit each by <see cref="AttackLine.Index"/>.</summary>
public readonly record struct LineSet(UInt128 Bits)
{
    public static readonly LineSet Empty = new(UInt128.Zero);

    public static LineSet Of(IEnumerable<AttackLine> lines) =>
        new(lines.Aggregate(UInt128.Zero, (bits, line) => bits | (UInt128.One << line.Index)));

    public bool IsEmpty => Bits == UInt128.Zero;

    public bool Contains(AttackLine line) => (Bits & (UInt128.One << line.Index)) != UInt128.Zero;

    public IEnumerable<AttackLine> Members
    {
        get
        {
            var bits = Bits;
            return Enumerable.Range(0, AttackLine.Count).Where(i => (bits & (UInt128.One << i)) != UInt128.Zero).Select(AttackLine.FromIndex);
        }
    }

    public LineSet Mirrored => Of(Members.Select(l => l.Mirrored));

    /// <summary>The members; the text of a record would print its mirror, and that its own, for ever.</summary>
    public override string ToString() => string.Join(", ", Members);
}
