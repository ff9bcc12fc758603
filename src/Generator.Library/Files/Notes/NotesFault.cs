namespace Generator.Library.Files.Notes;

/// <summary>What is wrong with a piece of a line.</summary>
/// <param name="Column">Column at which it stands, from 1.</param>
/// <param name="Message">A sentence that says what is wrong.</param>
/// <param name="Maybe">A sentence beginning "Maybe" that says what to try.</param>
internal sealed record NotesFault(int Column, string Message, string Maybe);
