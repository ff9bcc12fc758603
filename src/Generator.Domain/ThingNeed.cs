namespace Generator.Domain;

/// <summary>The thing that a technique, an attack or a reaction needs. It looks the same in a mirror.</summary>
/// <param name="Use">What is done with it.</param>
/// <param name="Where">Where it must be.</param>
/// <param name="Within">How far it may be from the middle of whoever uses it, 30 to 200 cm; of no meaning on the way.</param>
public sealed record ThingNeed(ThingUse Use, ThingPlace Where, Centimetres Within);
