namespace Generator.Library.Words;

/// <summary>What a record is known by, for <see cref="Ranking{T}"/>.</summary>
/// <param name="Record">The record.</param>
/// <param name="Phrases">Its id, name, other names and what is said of it.</param>
/// <param name="Weak">Words that describe it.</param>
/// <param name="Handicap">What it must fit better by, 0 to 1: records that hardly anybody means by a plain word.</param>
public sealed record Ranked<T>(T Record, IEnumerable<string> Phrases, IEnumerable<string> Weak, double Handicap = 0);
