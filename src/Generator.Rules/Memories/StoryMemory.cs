using Generator.Domain;

namespace Generator.Rules.Memories;

/// <summary>What story remembers.</summary>
/// <param name="Setbacks">Setbacks of each act so far.</param>
/// <param name="Owed">Setbacks after which the hero has not scored again.</param>
/// <param name="Scored">Family of the technique with which the hero scored last; null before the first.</param>
public sealed record StoryMemory(IReadOnlyList<int> Setbacks, IReadOnlyList<OwedSetback> Owed, Family? Scored);
