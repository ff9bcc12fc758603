using Generator.Paperwork.Text;
using Generator.Rules.Judging;
using Generator.Testing;

namespace Generator.Paperwork.Tests.Text;

public class WallSheetTests
{
    [Fact]
    public void A_night_on_the_ferry() => Golden.Matches("ferry", Sheet(Fights.Night, Fights.NothingFound, "perfect"));

    [Fact]
    public void A_routine_with_findings_names_that_try_the_page_and_no_camera() => Golden.Matches("crowded", Sheet(Fights.Crowded, Fights.Found, null));

    [Fact]
    public void A_routine_without_moves() => Golden.Matches("empty", Sheet(Fights.Night with { Moves = [] }, Fights.NothingFound, null));

    [Fact]
    public void It_says_how_the_fight_was_asked_to_be_and_who_fights_how()
    {
        var brutal = Fights.Night with { Brief = Fights.Ferry with { Style = "brutal", Hero = Fights.Ferry.Hero with { Manner = "brawler" } } };
        var sheet = string.Join(' ', Sheet(brutal, Fights.NothingFound, null).Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries));
        Assert.Contains("; style: brutal; library", sheet, StringComparison.Ordinal);
        Assert.Contains("left lead; manner: brawler A1", sheet, StringComparison.Ordinal);
        Assert.DoesNotContain("style", Sheet(Fights.Night, Fights.NothingFound, null), StringComparison.Ordinal);
    }

    [Fact]
    public void No_line_is_wider_than_the_page_or_ends_in_spaces()
    {
        foreach (var line in Sheet(Fights.Crowded, Fights.Found, "best found").Split('\n').Concat(Sheet(Fights.Night, Fights.Found, "best found").Split('\n')))
        {
            Assert.InRange(Page.LengthOf(line), 0, Page.Width);
            Assert.Equal(line.TrimEnd(), line);
            Assert.DoesNotContain(line, char.IsControl);
        }
    }

    [Fact]
    public void Steps_of_another_routine_are_refused() =>
        Assert.Throws<ArgumentException>(() => WallSheet.Of(Fights.SceneOf(Fights.Night), Fights.Night, Fights.NothingFound, Fights.Steps(Fights.Crowded), null));

    private static string Sheet(Domain.Routine routine, Verdict verdict, string? standing) =>
        WallSheet.Of(Fights.SceneOf(routine), routine, verdict, Fights.Steps(routine), standing);
}
