namespace Generator.Rules.Memories;

/// <summary>What rhythm remembers.</summary>
/// <param name="Moves">Moves of the exchange in hand; 0 before the first.</param>
/// <param name="Length">Moves of the exchange before it; 0 for none.</param>
/// <param name="Alike">How many exchanges before the one in hand had that length, one after the other.</param>
/// <param name="IsLong">Some exchange has had five moves.</param>
/// <param name="Contact">The last contact, in half counts.</param>
/// <param name="Beats">Contacts up to it, each within a count of the one before, up to three; 0 before the first.</param>
/// <param name="Flurries">Flurries after which there was a rest.</param>
public sealed record RhythmMemory(int Moves, int Length, int Alike, bool IsLong, int Contact, int Beats, int Flurries)
{
    public static readonly RhythmMemory None = new(0, 0, 0, false, 0, 0, 0);
}
