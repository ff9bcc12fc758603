using Generator.Domain.Sketches;

namespace Generator.Domain.Edits;

/// <summary>One change to a sketch, as somebody makes it at a table. Moves are numbered from 0 in the order of the sketch.</summary>
public abstract record Edit
{
    /// <summary>What it does, to stand behind "Undo:".</summary>
    public abstract string Name { get; }

    /// <summary>Numbers of moves that must be there (the first to be missing when <see cref="Sketch.Moves"/> has as many), so that the edit can be made.</summary>
    internal virtual int Needs => 0;

    /// <summary>The first move that it touches; below 0 there is none.</summary>
    internal virtual int Starts => 0;

    /// <summary>The move as people count, from 1.</summary>
    private protected static string Numbered(int move) => FormattableString.Invariant($"move {move + 1}");

    private protected static string Stretch(int first, int last) => first == last ? Numbered(first) : FormattableString.Invariant($"moves {first + 1} to {last + 1}");
}
