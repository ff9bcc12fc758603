using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Generator.Domain;
using Generator.Library.Files;
using Generator.Library.Reading;
using Generator.Testing;
using Newtonsoft.Json.Linq;

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
    public Property As_csv_it_is_read_back_the_same(Routine routine) =>
        Same(routine, RoutineReader.Parse(new SourceFile("x.csv", RoutineWriter.Csv(routine)), TinyBook.Book));

    /// <summary>A brief that stands beside a table goes before the one in it.</summary>
    [Property(Arbitrary = [typeof(Routines)], MaxTest = 50)]
    public Property A_brief_beside_a_table_is_the_one_that_counts(Routine routine)
    {
        var other = routine.Brief with { Title = "Another title", Tempo = new Tempo(routine.Brief.Tempo.CountsPerMinute == 77 ? 78 : 77) };
        return Same(routine with { Brief = other }, RoutineReader.Parse(new SourceFile("x.csv", RoutineWriter.Csv(routine)), TinyBook.Book, other));
    }

    /// <summary>A cell that a spreadsheet would run says so to nobody but itself, and what it said comes back.</summary>
    [Property(Arbitrary = [typeof(Routines)], MaxTest = 200)]
    public bool No_cell_of_a_csv_is_a_formula(Routine routine) =>
        CsvText.Parse("x.csv", RoutineWriter.Csv(routine), new ProblemList()).SelectMany(r => r.Cells).All(c => c.TrimStart(' ') is not ['=' or '+' or '-' or '@' or '\t' or '\r' or '\n', ..]);

    /// <summary>Whoever adds one to the routine gives it a column as well.</summary>
    [Fact]
    public void Everything_that_moves_and_openings_say_has_a_column()
    {
        Assert.Equal(RoutineTable.Columns.Count, typeof(Move).GetProperties().Length + typeof(Placement).GetProperties().Length + "brief and value".Split(" and ").Length);
    }

    /// <summary>A moment of the fight is text such as "12" or "12&amp;" wherever it stands; a span, such as a linger, is a number of counts.</summary>
    [Fact]
    public void Counts_of_the_fight_are_all_of_one_kind()
    {
        var seen = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var routine in Enumerable.Range(0, 300).Select(s => RandomRoutine.Of(s, TinyBook.Book)))
        {
            var root = JObject.Parse(RoutineWriter.Text(routine));
            JToken[] moments = [.. root.SelectTokens("$..count"), .. root.SelectTokens("$..entrance"), .. root.SelectTokens("$..moments[*].counts[*]")];
            foreach (var value in moments.Where(v => v.Type != JTokenType.Null))
            {
                Assert.Equal(JTokenType.String, value.Type);
                Assert.True(HalfCounts.TryParseCount((string?)value, out var moment) && (string?)value == moment.ToCountText(), value.Path);
                var kind = (value.Parent is JProperty property ? property.Name : "counts") + (moment.Value % 2 == 0 ? string.Empty : "&");
                seen[kind] = seen.GetValueOrDefault(kind) + 1;
            }

            Assert.All(root.SelectTokens("$..linger"), v => Assert.True(v.Type is JTokenType.Integer or JTokenType.Float));
        }

        Assert.Equal(["count", "count&", "counts", "counts&", "entrance", "entrance&"], seen.Keys.Order(StringComparer.Ordinal));
        Assert.All(seen.Values, n => Assert.True(n >= 20));
    }

    [Fact]
    public void The_random_routines_cover_what_a_row_can_say()
    {
        var routines = Enumerable.Range(0, 300).Select(s => RandomRoutine.Of(s, TinyBook.Book)).ToList();
        var moves = routines.SelectMany(r => r.Moves).ToList();
        Assert.InRange(routines.Count(r => r.Moves.Zip(r.Moves.Skip(1)).Any(p => p.Second.Start < p.First.Start)), 20, routines.Count - 20);
        Assert.All(
            new Func<Move, bool>[]
            {
                m => m.Attacker is null,
                m => m.Technique is null,
                m => m.Attack is null,
                m => m.Reaction is null,
                m => m is { Reaction: null, Technique: { } t } && TinyBook.Book.Technique(t).Reactions.Count > 1,
                m => m is { Reaction: { } r, Technique: { } t } && !TinyBook.Book.Technique(t).Reactions.Contains(r),
                m => m.From is not null,
                m => m.Cue == Cue.Sound,
                m => m.Start.Value % 2 == 1,
                m => m.Linger.Value % 2 == 1,
                m => m.Stance is not null,
                m => m.Hurts is not null,
                m => m.Note.StartsWith('='),
                m => m.Note.StartsWith('\''),
                m => m.Note.Contains('\n', StringComparison.Ordinal),
                m => m.Note.Contains('"', StringComparison.Ordinal),
            },
            shape => Assert.InRange(moves.Count(shape), 20, moves.Count - 20));
    }

    private static Property Same(Routine routine, Read<Routine> read) =>
        (read.IsGood && string.Equals(DeepText.Of(routine), DeepText.Of(read.Value), StringComparison.Ordinal))
            .Label(read.IsGood ? DeepText.Of(routine) + "\n---\n" + DeepText.Of(read.Value) : read.ToText());
}
