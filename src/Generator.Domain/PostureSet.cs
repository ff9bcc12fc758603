namespace Generator.Domain;

/// <summary>A set of postures, one bit each in the order of <see cref="Posture"/>.</summary>
public readonly record struct PostureSet(int Bits)
{
    public static readonly PostureSet Empty = new(0);

    public static PostureSet Of(params ReadOnlySpan<Posture> postures)
    {
        var bits = 0;
        foreach (var posture in postures)
        {
            bits |= 1 << (int)posture;
        }

        return new PostureSet(bits);
    }

    public bool IsEmpty => Bits == 0;

    public bool Contains(Posture posture) => (Bits & (1 << (int)posture)) != 0;

    public IEnumerable<Posture> Members
    {
        get
        {
            var bits = Bits;
            return Enum.GetValues<Posture>().Where(p => (bits & (1 << (int)p)) != 0);
        }
    }
}
