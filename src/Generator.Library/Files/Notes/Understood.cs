namespace Generator.Library.Files.Notes;

/// <summary>One piece of a sketch and what it was taken for.</summary>
/// <param name="Line">Line from 1.</param>
/// <param name="Move">Number of the move in the sketch, from 1.</param>
/// <param name="Text">As written.</param>
/// <param name="As">Names of what it may mean.</param>
/// <param name="IsGuess">The words are no name: the best fits were taken.</param>
public sealed record Understood(int Line, int Move, string Text, IReadOnlyList<string> As, bool IsGuess);
