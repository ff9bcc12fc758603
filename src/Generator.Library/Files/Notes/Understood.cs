namespace Generator.Library.Files.Notes;

/// <summary>One piece of a sketch and what it was taken for.</summary>
/// <param name="Line">Line from 1.</param>
/// <param name="Move">Number of the move in the sketch, from 1; 0 where none is meant.</param>
/// <param name="Text">As written.</param>
/// <param name="As">Ids of what it may mean; where it is no technique, attack or reaction, its meaning in words.</param>
/// <param name="IsGuess">The words are no name: the best fits were taken.</param>
public sealed record Understood(int Line, int Move, string Text, IReadOnlyList<string> As, bool IsGuess = false)
{
    /// <summary><see cref="As"/> holds words and no ids.</summary>
    public bool IsPlain { get; init; }

    /// <summary>Words of the text of which nothing that was taken speaks.</summary>
    public IReadOnlyList<string> Unread { get; init; } = [];

    /// <summary>What was understood beside the record, such as that it must stay.</summary>
    public IReadOnlyList<string> Also { get; init; } = [];
}
