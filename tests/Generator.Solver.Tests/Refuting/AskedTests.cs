using Generator.Domain;
using Generator.Rules;
using Generator.Solver.Questions;
using Generator.Solver.Refuting;
using Generator.Solver.Tests.Constructing;

namespace Generator.Solver.Tests.Refuting;

public class AskedTests
{
    [Fact]
    public void Nothing_is_said_against_a_brief_that_can_be_drafted() => Assert.Empty(Clash(Drafts.Plain()));

    [Fact]
    public void Too_few_moves_for_what_is_asked() =>
        Contains(Drafts.Plain() with { Length = new Length(null, 2, 0), Setbacks = 3 }, "2 moves at the most has no room");

    [Fact]
    public void Too_few_counts_for_what_is_asked() =>
        Contains(Drafts.Plain() with { Length = new Length(4, null, 0), Setbacks = 3, Pauses = 2 }, "4 counts at the most has no room");

    [Fact]
    public void A_moment_after_the_end() =>
        Contains(Drafts.Plain(new Moment([new MomentMove("hip-throw", null, null, null)], new HalfCounts(80), null)), "after the end");

    [Fact]
    public void A_moment_that_ends_before_it_begins() =>
        Contains(Drafts.Plain(new Moment([new MomentMove("hip-throw", null, null, null)], new HalfCounts(20), new HalfCounts(10))), "no later than count");

    [Fact]
    public void A_moment_beyond_the_hero() =>
        Contains(Drafts.Plain(new Moment([new MomentMove("hip-throw", null, null, null)], null, null)) with { Hero = new HeroPart { Name = "Ines", Skill = Skill.Novice } }, "Ines is novice");

    [Fact]
    public void A_moment_beyond_its_attacker() =>
        Contains(Drafts.Plain(new Moment([new MomentMove("hip-throw", "Wanda", null, null)], null, null)), "Wanda is trained");

    [Fact]
    public void A_moment_whose_every_reaction_is_forbidden() =>
        Contains(
            Drafts.Plain(new Moment([new MomentMove("outside-reap", "Wanda", null, null)], null, null)) with { Attackers = [new AttackerPart { Name = "Wanda", Limits = ["no-back-fall"] }] },
            "no-back-fall");

    [Fact]
    public void A_moment_with_a_reaction_that_does_not_suit_it() =>
        Contains(Drafts.Plain(new Moment([new MomentMove("hip-throw", "Bruno", null, "falls-short")], null, null)), "falls-short does not suit");

    [Fact]
    public void A_moment_that_the_library_does_not_know() =>
        Contains(Drafts.Plain(new Moment([new MomentMove("moon-kick", null, null, null)], null, null)), "there is no technique moon-kick");

    [Fact]
    public void The_last_one_stays_in() =>
        Contains(Drafts.Plain() with { Ending = new Ending(["Bruno"], "Wanda") }, "Wanda is to go out last");

    [Fact]
    public void Opening_beyond_the_floor() =>
        Contains(Placed(new Bearing(0), 900, new Bearing(12)), "opens 9.00 m out at 12 o'clock");

    [Fact]
    public void Opening_on_top_of_one_another() =>
        Contains(Placed(new Bearing(3), 200, new Bearing(4)), "open less than 1.00 m apart");

    private static Brief Placed(Bearing first, int distance, Bearing second) => Drafts.Plain() with
    {
        Attackers =
        [
            new AttackerPart { Name = "Bruno", Bearing = first, Distance = new Centimetres(distance) },
            new AttackerPart { Name = "Wanda", Bearing = second, Distance = new Centimetres(200) },
        ],
    };

    private static IReadOnlyList<string> Clash(Brief brief) => Refutations.Reasons(new Scene(DraftBrief.Complete(brief, Drafts.Book), Drafts.Book));

    /// <summary>The check says so, and a draft answers with it.</summary>
    private static void Contains(Brief brief, string words)
    {
        Assert.Contains(Clash(brief), c => c.Contains(words, StringComparison.Ordinal));
        var result = Drafts.Draft(brief);
        Assert.Equal(DraftStatus.Impossible, result.Status);
        Assert.NotEmpty(result.Clash);
        Assert.Contains(result.Reasons, c => c.Contains(words, StringComparison.Ordinal));
    }
}
