namespace Generator.Paperwork.Following;

/// <summary>A moment at which an attack lands, or would, or a hit of the hero does.</summary>
/// <param name="Time">In half counts.</param>
/// <param name="Move">Number of the move, from 1.</param>
/// <param name="ByHero">The hero's hit, not the attacker's.</param>
/// <param name="On">Whom it is meant for: number in the brief, from 0; −1 for the hero.</param>
/// <param name="Lands">They take it; else it is blocked, slipped or caught.</param>
public readonly record struct Contact(int Time, int Move, bool ByHero, int On, bool Lands);
