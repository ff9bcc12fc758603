namespace Generator.Rules.Memories;

/// <summary>What ending remembers.</summary>
/// <param name="Finished">One bit for each attacker whom a finish put out.</param>
public sealed record EndingMemory(int Finished)
{
    public static readonly EndingMemory Nobody = new(0);

    public bool Contains(int attacker) => (Finished & (1 << attacker)) != 0;
}
