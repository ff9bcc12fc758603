namespace Generator.Paperwork.Following;

/// <summary>A moment at which an attack lands, or would, or a hit of the hero does.</summary>
/// <param name="Time">In half counts.</param>
/// <param name="Move">Number of the move, from 1.</param>
/// <param name="ByHero">The hero's hit, not the attacker's.</param>
public readonly record struct Contact(int Time, int Move, bool ByHero);
