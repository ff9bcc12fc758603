using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Generator.Domain;
using Generator.Library.Files;
using Generator.Library.Reading;
using Generator.Testing;

namespace Generator.Library.Tests.Files;

public class RoutineRoundTripTests
{
    [Property(Arbitrary = [typeof(Routines)], MaxTest = 500)]
    public Property A_written_routine_reads_back_the_same(Routine routine)
    {
        var read = RoutineReader.Parse(new SourceFile("x.routine.json", RoutineWriter.Text(routine)), TinyBook.Book);
        return Same(routine, read);
    }

    [Property(Arbitrary = [typeof(Routines)], MaxTest = 500)]
    public Property Its_rows_as_csv_read_back_the_same_with_its_brief(Routine routine)
    {
        var placed = routine.Brief with
        {
            Attackers = [.. routine.Brief.Attackers.Zip(routine.Placements, (a, p) => a with { Bearing = p.Bearing, Distance = p.Distance, Entrance = p.Entrance })],
        };
        var read = RoutineReader.Parse(new SourceFile("x.csv", RoutineWriter.Csv(routine)), TinyBook.Book, placed);
        return Same(routine with { Brief = placed, LibraryVersion = string.Empty }, read);
    }

    [Fact]
    public void The_random_routines_cover_what_a_row_can_say()
    {
        var moves = Enumerable.Range(0, 300).SelectMany(s => RandomRoutine.Of(s, TinyBook.Book).Moves).ToList();
        Assert.All(
            new Func<Move, bool>[]
            {
                m => m.Attacker is null,
                m => m.Technique is null,
                m => m.Attack is null,
                m => m.Reaction is null,
                m => m.From is not null,
                m => m.Cue == Cue.Sound,
                m => m.Start.Value % 2 == 1,
                m => m.Linger.Value % 2 == 1,
                m => m.Note.Contains('\n', StringComparison.Ordinal),
                m => m.Note.Contains('"', StringComparison.Ordinal),
            },
            shape => Assert.InRange(moves.Count(shape), 20, moves.Count - 20));
    }

    private static Property Same(Routine routine, Read<Routine> read) =>
        (read.IsGood && string.Equals(DeepText.Of(routine), DeepText.Of(read.Value), StringComparison.Ordinal))
            .Label(read.IsGood ? DeepText.Of(routine) + "\n---\n" + DeepText.Of(read.Value) : read.ToText());
}
