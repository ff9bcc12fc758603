using FsCheck.Xunit;
using Generator.Domain;
using Generator.Domain.Sketches;
using Generator.Library.Files;
using Generator.Library.Files.Notes;
using Generator.Library.Reading;
using Generator.Testing;

namespace Generator.Library.Tests.Files;

/// <summary>Sketches are read as they were written, whatever is open in them, and never taken for a routine.</summary>
public class SketchWriterTests
{
    private static readonly Book Book = TinyBook.Book;

    [Property(MaxTest = 60)]
    public void What_is_written_is_read_again(int seed)
    {
        var chance = new Chance(seed);
        var routine = RandomRoutine.Of(seed, Book);
        var sketch = Sketch.Of(routine);
        sketch = sketch with
        {
            Placements = [.. sketch.Placements.Select(p => chance.Percent(70) ? p : null)],
            Moves = [.. sketch.Moves.Zip(routine.Moves, (m, r) => Opened(chance, m) with { Note = r.Note, Cue = r.Cue, Linger = r.Linger, Stance = r.Stance }), new SketchMove { Line = 1, Open = chance.Percent(50) ? 4 : Sketch.OpenMoves }],
        };
        foreach (var file in new[] { new SourceFile("a.json", SketchWriter.Text(sketch)), new SourceFile("a.csv", SketchWriter.Csv(sketch)) })
        {
            var read = SketchReader.Parse(file, Book, sketch.Brief);
            Assert.True(read.IsGood, read.ToText());
            Assert.Equal(sketch.Moves.Select(Shown), read.Value.Sketch.Moves.Select(Shown));
            Assert.False(RoutineReader.Parse(file, Book, sketch.Brief).IsGood);
        }
    }

    private static SketchMove Opened(Chance chance, SketchMove move) => move with
    {
        Attack = chance.Percent(50) ? move.Attack : null,
        FollowsUp = move.FollowsUp && chance.Percent(50),
        Technique = move.Technique is { } cell && chance.Percent(70) ? cell with { Firmness = chance.Any<Firmness>() } : null,
        Reaction = chance.Percent(70) ? move.Reaction : null,
        Count = chance.Percent(70) ? move.Count : null,
        IsSuffered = false,
    };

    private static string Shown(SketchMove move)
    {
        return string.Join('|', move.Attacker, move.From, move.FollowsUp, move.IsSuffered, Cell(move.Attack), Cell(move.Technique), Cell(move.Reaction), move.Count, move.Cue, move.Linger, move.Stance, move.Hurts?.Text, move.Note, move.Open);

        static string Cell(SketchCell? cell) => cell is null ? "open" : $"{string.Join(',', cell.Ids)} {cell.Firmness} {cell.Foot}";
    }
}
