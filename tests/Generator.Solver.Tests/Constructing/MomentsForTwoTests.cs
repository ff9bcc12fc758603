using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Replaying;
using Generator.Solver.Constructing;

namespace Generator.Solver.Tests.Constructing;

/// <summary>Hero moments on two attackers at once: the search brings a second one beside the first, both open at once.</summary>
public sealed class MomentsForTwoTests
{
    private const int Rounds = 12;

    public static TheoryData<string> All => [.. Drafts.Book.Techniques.Where(t => t.TakesTwo).Select(t => t.BaseId).Distinct()];

    [Theory]
    [MemberData(nameof(All))]
    public void Each_is_drafted_when_it_is_asked_for_and_takes_two(string technique) => Takes(technique, Asking(technique, "Bruno", "Wanda", "Piet"));

    /// <summary>Where there are but two, both must be there, and open, at the same time.</summary>
    [Fact]
    public void The_only_two_are_finished_together() =>
        Takes("heads-together", Asking("heads-together", "Bruno", "Wanda") with { Length = new Length(null, 24, 2), Ending = new Ending(["Bruno", "Wanda"], null) });

    private static Brief Asking(string technique, params string[] attackers) => new()
    {
        Length = new Length(32, null, 6),
        Hero = new HeroPart { Name = "Ines", Skill = Skill.Stunt },
        Attackers = [.. attackers.Select(n => new AttackerPart { Name = n, Skill = Skill.Stunt })],
        Moments = [new Moment([new MomentMove(technique, null, null, null)], null, null)],
    };

    private static void Takes(string technique, Brief brief)
    {
        var scene = new Scene(DraftBrief.Complete(brief, Drafts.Book), Drafts.Book);
        var taking = Replay.Of(scene, Drafts.First(scene, Rounds)).Where(s => s.Technique?.BaseId == technique).ToList();
        Assert.NotEmpty(taking);
        Assert.All(taking, s => Assert.True(s.Second >= 0 && s.Second != s.Row.Attacker));
    }
}
