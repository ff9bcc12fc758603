using Generator.Domain;
using Generator.Rules.Bodies;

namespace Generator.Rules.Replaying;

/// <summary>Where one prop is between two moves.</summary>
/// <param name="Holder">Number of the attacker who holds it, −1 for the hero, <see cref="NoOne"/> where it lies or is broken.</param>
/// <param name="Hand">The hand that holds it, or held it last.</param>
/// <param name="Place">Where it lies, or on whom it broke, from the first mark; of no meaning while it is held.</param>
/// <param name="Broken">A break-away that is used up.</param>
public sealed record PropState(int Holder, PropHand Hand, Place Place, bool Broken)
{
    /// <summary>Of a fight without props.</summary>
    public static readonly FixedList<PropState> None = [];

    /// <summary>Nobody holds it.</summary>
    public const int NoOne = -2;

    /// <summary>It lies on the floor and can be taken up.</summary>
    public bool Lies => Holder == NoOne && !Broken;

    /// <summary>This hand of the hero's (−1) or of an attacker's holds it.</summary>
    public bool IsIn(int who, Side hand) => Holder == who && Hand.Has(hand);
}
