using Generator.Domain;

namespace Generator.Library.Files;

/// <summary>What a routine says of where one attacker opens; null where it says nothing.</summary>
internal sealed record Place(Bearing? Bearing, Centimetres? Distance, HalfCounts? Entrance);
