using Generator.Domain;

namespace Generator.Paperwork.Printing;

/// <summary>A move on the poster.</summary>
/// <param name="Move">"m4".</param>
/// <param name="Count">"c12&amp;".</param>
/// <param name="Performer">Number of the attacker in the brief, from 0; −1 for the hero alone.</param>
/// <param name="Name">Who comes, or the hero alone, as short as it must be.</param>
/// <param name="From">Where an exchange opens; null within one.</param>
/// <param name="Technique">What the hero does.</param>
/// <param name="Around">Attack, cue and reaction.</param>
/// <param name="Falls">Who falls.</param>
/// <param name="IsGrave">Something unsafe or broken was found in it.</param>
public sealed record PosterMove(string Move, string Count, int Performer, string Name, Bearing? From, string Technique, string Around, IReadOnlyList<string> Falls, bool IsGrave);
