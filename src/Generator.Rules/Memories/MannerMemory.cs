using Generator.Rules.Combining;

namespace Generator.Rules.Memories;

/// <summary>What manner remembers.</summary>
/// <param name="Seen">One bit for each thing that the brief favours: it has come.</param>
/// <param name="Combined">One bit for each attacker: they have thrown a combination.</param>
/// <param name="Run">Attacks in a row that one may go on from.</param>
public sealed record MannerMemory(ulong Seen, int Combined, AttackRun Run)
{
    public static readonly MannerMemory None = new(0, 0, AttackRun.None);
}
