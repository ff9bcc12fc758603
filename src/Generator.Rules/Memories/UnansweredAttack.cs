namespace Generator.Rules.Memories;

/// <summary>An attack that nothing has answered so far.</summary>
/// <param name="Move">Number of the row, from 1.</param>
/// <param name="Start">Its moment in half counts.</param>
/// <param name="Attacker">Who threw it.</param>
/// <param name="Attack">Position of the attack in the book.</param>
public sealed record UnansweredAttack(int Move, int Start, int Attacker, int Attack);
