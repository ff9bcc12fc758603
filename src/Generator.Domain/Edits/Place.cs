namespace Generator.Domain.Edits;

/// <summary>Where an attacker opens.</summary>
/// <param name="Attacker">Number in the brief, from 0.</param>
/// <param name="Who">Their name, for the name of the edit.</param>
/// <param name="At">Where and from when; null leaves it open.</param>
public sealed record Place(int Attacker, string Who, Placement? At) : Edit
{
    public override string Name => $"where {Who} opens";
}
