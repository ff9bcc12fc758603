using Generator.Domain;
using Generator.Figures.Bodies;

namespace Generator.Paperwork.Following;

/// <summary>A prop in one hand, or on the floor, for a while.</summary>
/// <param name="From">Half count.</param>
/// <param name="To">Half count, infinite for good.</param>
/// <param name="Holder">Number of the attacker who holds it, −1 for the hero, below that nobody.</param>
/// <param name="Hand">The hand from which it reaches.</param>
/// <param name="Ways">From the hand to its far end, at the keys of whoever holds it, in the frame of their wrist; of what lies one, in space. Metres.</param>
public sealed record ActedStay(double From, double To, int Holder, Side Hand, IReadOnlyList<(double Time, Vec Way)> Ways)
{
    /// <summary>Where its near end lies; null while it is held.</summary>
    public Vec? Lies { get; init; }

    /// <summary>It is there at this moment.</summary>
    public bool Holds(double time) => From <= time && time < To;
}
