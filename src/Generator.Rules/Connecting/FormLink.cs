namespace Generator.Rules.Connecting;

/// <summary>One move of a chain.</summary>
/// <param name="May">Technique and reaction (−1 for none) that it may be, as positions in the book.</param>
/// <param name="MayBefore">The same of a move that may come before it within the same link; null where none may.</param>
public sealed record FormLink(Func<int, int, bool> May, Func<int, int, bool>? MayBefore = null);
