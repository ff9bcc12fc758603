namespace Generator.Domain;

/// <summary>On what terms a thing may be used in one way, whatever its kind.</summary>
/// <param name="Use">What is done with it.</param>
/// <param name="Rated">It must be rated for the weight of those who come onto it.</param>
/// <param name="Padded">It must be padded.</param>
/// <param name="Least">Lowest height at which it can be done.</param>
/// <param name="Most">Greatest height at which it can be done.</param>
/// <param name="Check">What is looked at before the call.</param>
public sealed record ThingTerms(ThingUse Use, bool Rated, bool Padded, Centimetres Least, Centimetres Most, string Check);
