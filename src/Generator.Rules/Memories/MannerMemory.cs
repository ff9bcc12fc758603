namespace Generator.Rules.Memories;

/// <summary>What manner remembers.</summary>
/// <param name="Seen">One bit for each thing that the brief favours: it has come.</param>
public sealed record MannerMemory(ulong Seen)
{
    public static readonly MannerMemory None = new(0);
}
