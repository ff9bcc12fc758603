namespace Generator.Rules.Memories;

/// <summary>What one-contact remembers.</summary>
/// <param name="Last">For each attacker the contact of the last attack in half counts; <see cref="AnswersMemory.Never"/> before the first.</param>
public sealed record ContactsMemory(IReadOnlyList<int> Last);
