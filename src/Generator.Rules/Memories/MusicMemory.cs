namespace Generator.Rules.Memories;

/// <summary>Which accents of the brief are settled.</summary>
/// <param name="Settled">A bit for each accent that has had its contact, or has been charged for.</param>
public sealed record MusicMemory(ulong Settled)
{
    public static readonly MusicMemory None = new(0);

    public bool IsSettled(int accent) => (Settled & (1UL << accent)) != 0;
}
