using Generator.Library.Reading;

namespace Generator.Library.Loading;

/// <summary>A record together with the place in a file that it was read from, so that later checks can point at it.</summary>
internal sealed record Placed<T>(T Record, ObjectReader Source);
