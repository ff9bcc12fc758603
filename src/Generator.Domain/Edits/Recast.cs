namespace Generator.Domain.Edits;

/// <summary>Another brief: who is in it, and the floor. Whoever stays keeps their moves and their place; those of whoever goes are left for somebody else.</summary>
/// <param name="What">What is other, to stand behind "Undo:".</param>
/// <param name="Brief">From now on.</param>
/// <param name="Was">For each of its attackers the number that they had, from 0; null for one who is new.</param>
public sealed record Recast(string What, Brief Brief, IReadOnlyList<int?> Was) : Edit
{
    public override string Name => What;
}
