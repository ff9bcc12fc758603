namespace Generator.Library.Words;

/// <summary>What a word out of a notebook may stand for.</summary>
/// <typeparam name="T">Technique, attack or reaction.</typeparam>
/// <param name="Found">
/// The record meant; both sides, as the book orders them, when the word has no side and the record has one.
/// Empty when the word is unknown or too wide.
/// </param>
/// <param name="Suggestions">
/// Ids of the three records nearest to the word, best first, with a side only if the word had one; empty when something was found or there was no word.
/// </param>
/// <param name="IsTooWide">The word, such as "kick", stands for too much to mean one record.</param>
public sealed record Lookup<T>(IReadOnlyList<T> Found, IReadOnlyList<string> Suggestions, bool IsTooWide = false)
{
    public bool IsFound => Found.Count > 0;
}
