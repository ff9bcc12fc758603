using System.Text;
using Generator.Paperwork.Html;
using Generator.Rules;

namespace Generator.Paperwork.Tests.Html;

/// <summary>A page that is sent by post and opened on a phone stays small, however long the fight.</summary>
public class PageWeightTests
{
    /// <summary>Bytes of the page of sixty moves of nine people.</summary>
    private const int Most = 900_000;

    [Fact]
    public void Sixty_moves_of_nine_people_are_no_more_than_900_kilobytes()
    {
        var routine = Ferry.Stored("sixty-moves.routine.json");
        Assert.Equal((60, 8), (routine.Moves.Count, routine.Brief.Attackers.Count));
        var source = PaperSource.Of(new Scene(routine.Brief, Ferry.Book), routine).With(PaperOptions.Default with { Cards = Ferry.Cards });
        var page = RoutinePaper.Of(new RoutineView(source));
        Assert.Contains("id=\"move-60\"", page, StringComparison.Ordinal);
        Assert.Contains("id=\"round\"", page, StringComparison.Ordinal);
        Assert.InRange(Encoding.UTF8.GetByteCount(page), 300_000, Most);
    }
}
