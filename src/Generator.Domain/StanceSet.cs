namespace Generator.Domain;

/// <summary>A set of stances, one bit each in the order of <see cref="Stance"/>.</summary>
public readonly record struct StanceSet(int Bits)
{
    public static StanceSet Of(params ReadOnlySpan<Stance> stances)
    {
        var bits = 0;
        foreach (var stance in stances)
        {
            bits |= 1 << (int)stance;
        }

        return new StanceSet(bits);
    }

    public bool Contains(Stance stance) => (Bits & (1 << (int)stance)) != 0;

    /// <summary>Those that are in both.</summary>
    public StanceSet And(StanceSet other) => new(Bits & other.Bits);

    public IEnumerable<Stance> Members
    {
        get
        {
            var bits = Bits;
            return Enum.GetValues<Stance>().Where(s => (bits & (1 << (int)s)) != 0);
        }
    }

    public StanceSet Mirrored => Of([.. Members.Select(s => s.Mirrored())]);

    /// <summary>The members; the text of a record would print its mirror, and that its own, for ever.</summary>
    public override string ToString() => string.Join(", ", Members);
}
