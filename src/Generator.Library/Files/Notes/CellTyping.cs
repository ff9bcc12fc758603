using Generator.Domain.Edits;
using Generator.Domain.Sketches;
using Generator.Library.Words;

namespace Generator.Library.Files.Notes;

/// <summary>Reads single cells of a sketch as somebody types them, and lines of notes, in plain words.</summary>
public sealed class CellTyping(Book book)
{
    private readonly MeaningFinder finder = new(book);

    /// <summary>What words in one cell of a move would say.</summary>
    /// <param name="sketch">The sketch as it stands; what a technique means depends on the attack beside it.</param>
    /// <param name="at">The move, from 0.</param>
    /// <param name="column">The cell.</param>
    /// <param name="text">As typed; blank for open, <c>-</c> for nothing.</param>
    public TypedCell Read(Sketch sketch, int at, Column column, string text)
    {
        var move = sketch.Moves[at];
        var row = new TypedRow(at + 1, f => f == column ? text : IsBeside(f, column) ? SketchWriter.Typed(sketch, move, f) : null);
        var reader = new RowNotes(sketch.Brief, finder);
        var said = reader.Read(row);

        // What is read last is this cell's, unless nothing was read from it: then it is that of a cell beside it.
        var isRead = row.Problem is null && column is not (Column.By or Column.Cue or Column.To or Column.Stance or Column.Linger) && text.Trim() is not ("" or RowNotes.None or RowNotes.Open);
        return new TypedCell(column == Column.Note ? said with { Note = text } : said, isRead && reader.Understood is [.., var last] ? last : null, row.Problem);
    }

    /// <summary>Cells on which it depends what another one means.</summary>
    private static bool IsBeside(Column cell, Column read) => (cell, read) is (Column.Attack, Column.Technique) or (Column.Attacker, Column.From) or (Column.Count, Column.Hurts);

    private sealed class TypedRow(int line, Func<Column, string?> typed) : RoutineRow
    {
        public override int Line => line;

        public (string Message, string Maybe)? Problem { get; private set; }

        public override string? Text(string field) => Enum.TryParse<Column>(field, ignoreCase: true, out var column) && typed(column)?.Trim() is { Length: > 0 } text ? text : null;

        protected override void Report(string field, string message, string maybe) => Problem ??= (message, maybe);
    }
}
