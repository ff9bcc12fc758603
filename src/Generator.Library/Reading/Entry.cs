using Newtonsoft.Json.Linq;

namespace Generator.Library.Reading;

/// <summary>One entry of a list in a file.</summary>
/// <param name="Value">What stands there.</param>
/// <param name="Path">Where: the list's own path and the entry's number, from 0.</param>
public sealed record Entry(JToken Value, string Path);
