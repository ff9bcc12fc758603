namespace Generator.Domain;

/// <summary>The prop that a technique, an attack or a reaction is done with.</summary>
/// <param name="Use">What is done with it.</param>
/// <param name="Holder">Where it is before.</param>
/// <param name="Hand">The holder's own hand that holds it; null for any.</param>
/// <param name="Then">What becomes of it.</param>
/// <param name="Into">The hand that it comes into where it is taken or passed on; else null.</param>
public sealed record PropNeed(PropUse Use, PropHolder Holder, PropHand? Hand, PropFate Then, PropHand? Into)
{
    /// <summary>The same in a mirror.</summary>
    public PropNeed Mirrored => this with { Hand = Hand?.Mirrored(), Into = Into?.Mirrored() };

    /// <summary>Whoever does the record reaches farther by its length: it is what meets the other.</summary>
    public bool Reaches => Use is PropUse.Swing or PropUse.Thrust or PropUse.Slash or PropUse.Hook or PropUse.Press or PropUse.Break;
}
