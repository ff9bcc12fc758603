using System.Collections.Immutable;
using Generator.Domain.Sketches;

namespace Generator.Domain.Edits;

/// <summary>A sketch with everything that was done to it, and what was undone and may be done again. Never changes: each step is another history.</summary>
public sealed record History
{
    private ImmutableStack<(Edit Edit, Sketch Before)> done = [];
    private ImmutableStack<(Edit Edit, Sketch After)> undone = [];

    private History(Sketch present) => Present = present;

    public Sketch Present { get; private init; }

    /// <summary>How often it was changed, undoing and doing again included: two that say the same number show the same.</summary>
    public int Revision { get; private init; }

    /// <summary>What undoing would take back; null where there is nothing.</summary>
    public string? ToUndo => done.IsEmpty ? null : done.Peek().Edit.Name;

    /// <summary>What would be done again; null where there is nothing.</summary>
    public string? ToRedo => undone.IsEmpty ? null : undone.Peek().Edit.Name;

    /// <summary>Everything that was done and not undone, in that order.</summary>
    public IEnumerable<Edit> Done => done.Reverse().Select(d => d.Edit);

    public static History Of(Sketch sketch) => new(sketch);

    /// <exception cref="EditException">It cannot be done.</exception>
    public History Do(Edit edit) => new(Editing.Apply(Present, edit)) { Revision = Revision + 1, done = done.Push((edit, Present)) };

    /// <summary>Without the last edit; the same where there is none.</summary>
    public History Undo() => done.IsEmpty ? this
        : new(done.Peek().Before) { Revision = Revision + 1, done = done.Pop(), undone = undone.Push((done.Peek().Edit, Present)) };

    /// <summary>With the edit that was undone last; the same where there is none, or something else was done since.</summary>
    public History Redo() => undone.IsEmpty ? this
        : new(undone.Peek().After) { Revision = Revision + 1, done = done.Push((undone.Peek().Edit, Present)), undone = undone.Pop() };
}
