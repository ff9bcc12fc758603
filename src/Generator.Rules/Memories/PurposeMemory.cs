namespace Generator.Rules.Memories;

/// <summary>What purpose remembers.</summary>
/// <param name="Attacks">Attacks so far.</param>
/// <param name="Unseen">Those of them from outside the hero's sight.</param>
/// <param name="Used">One bit for each attacker who is held: the hold has led to something.</param>
public sealed record PurposeMemory(int Attacks, int Unseen, int Used)
{
    public static readonly PurposeMemory None = new(0, 0, 0);
}
