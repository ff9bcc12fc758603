using Generator.Domain;
using Generator.Domain.Sketches;
using Generator.Solver.Completing;
using Generator.Solver.Tests.Constructing;
using Generator.Testing;
using Xunit.Abstractions;

namespace Generator.Solver.Tests.Travelling;

/// <summary>Sketches of fights over several marks.</summary>
public class TravellingSketchTests(ITestOutputHelper output)
{
    /// <summary>Moves tried in each at most.</summary>
    private const long Work = 4_000_000;

    /// <summary>Cells of all kinds, those of travel moves among them: eight cases.</summary>
    [Fact]
    public void Cells_erased_from_a_clean_routine_are_filled_with_nothing_given_up()
    {
        var cases = Fights.All.SelectMany((r, i) => new[] { 15, 45 }.Select((percent, k) => Erased.Of(r, new Chance((10 * i) + k), Erasing.Mixed, percent)));
        foreach (var sketch in cases)
        {
            var completed = Complete.Soon(sketch, Drafts.Book, Work);
            output.WriteLine(completed is null ? "nothing" : string.Join(", ", completed.Gave.Select(g => $"{g.Part} {g.Move}")));
            Assert.True(completed is { Verdict.IsClean: true });
            Assert.Empty(completed.Gave);
            Assert.All(sketch.Moves.Zip(completed.Rows), p => Assert.True(p.First.To is not { } to || completed.Routine.Moves[p.Second].To == to));
        }
    }

    /// <summary>Which mark is meant goes without saying: the next.</summary>
    [Fact]
    public void A_travel_move_that_does_not_say_where_leads_to_the_next_mark()
    {
        foreach (var routine in Fights.All)
        {
            var all = Erased.Nothing(routine);
            var completed = Complete.Soon(all with { Moves = [.. all.Moves.Select(m => m with { To = null })] }, Drafts.Book, Work)!;
            Assert.Empty(completed.Gave);
            Assert.Equal(Fights.Marks(routine), Fights.Marks(completed.Routine));
        }
    }

    /// <summary>Where only the mark is written a travel move stands, and where the mark before is not written any more, one that leads there.</summary>
    [Fact]
    public void A_mark_that_is_written_is_reached_and_one_before_it_as_well()
    {
        foreach (var routine in Fights.All)
        {
            var all = Erased.Nothing(routine);
            var last = routine.Moves.ToList().FindLastIndex(m => m.To is not null);
            var open = all with { Moves = [.. all.Moves.Select((m, i) => routine.Moves[i].To is null ? m : new SketchMove { Line = i + 1, To = i == last ? m.To : null })] };
            var completed = Complete.Soon(open, Drafts.Book, Work)!;
            Assert.Empty(completed.Gave);
            Assert.Equal(Fights.Marks(routine), Fights.Marks(completed.Routine));
        }
    }

    [Fact]
    public void One_wrong_cell_costs_no_more_than_one_departure()
    {
        var tried = 0;
        foreach (var (routine, i) in Fights.All.Select((r, i) => (r, i)))
        {
            foreach (var wrong in Wrong(Erased.Nothing(routine), new Chance(i)))
            {
                var completed = Complete.Soon(wrong, Drafts.Book, Work, enough: SketchPart.Technique.Price());
                output.WriteLine(completed is null ? "nothing" : string.Join(", ", completed.Gave.Select(g => $"{g.Part} {g.Move}")));
                Assert.True(completed is { Verdict.IsClean: true, Gave.Count: <= 1 });
                tried++;
            }
        }

        Assert.Equal(8, tried);
    }

    /// <summary>The mark of a travel move, and another technique in its place.</summary>
    private static IEnumerable<Sketch> Wrong(Sketch all, Chance chance)
    {
        var at = all.Moves.ToList().FindIndex(m => m.To is not null);
        Sketch With(SketchMove move) => all with { Moves = [.. all.Moves.Select((m, i) => i == at ? move : m)] };
        yield return With(all.Moves[at] with { To = 0 });
        var other = chance.One([.. Drafts.Book.Techniques.Where(t => t is { Travel: null, Family: Family.Strike })]).Id;
        yield return With(all.Moves[at] with { Technique = new SketchCell(other, [other]) });
    }
}
