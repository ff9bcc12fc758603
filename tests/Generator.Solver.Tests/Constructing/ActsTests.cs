using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Judging;
using Generator.Solver.Rolling;
using Xunit.Abstractions;

namespace Generator.Solver.Tests.Constructing;

/// <summary>A brief with acts is drafted as a story: setbacks stand where they belong and are felt, and the end is the peak.</summary>
public sealed class ActsTests(ITestOutputHelper output)
{
    private static readonly Brief Asked = new()
    {
        Length = new Length(null, 24, 2),
        Attackers = [new AttackerPart { Name = "Bruno", Skill = Skill.Stunt }, new AttackerPart { Name = "Wanda", Skill = Skill.Stunt }],
        Setbacks = 2,
    };

    private static int Points(Verdict verdict) => verdict.PointsByRule[RuleBook.IndexOf("story")] + verdict.PointsByRule[RuleBook.IndexOf("climax")];

    [Fact]
    public void Drafts_with_acts_tell_the_story_and_drafts_without_do_not()
    {
        var (told, untold) = (0, 0);
        for (var seed = 1; seed <= 3; seed++)
        {
            var plain = Drafts.Rounds(Asked with { Acts = [] }, seed);
            told += Points(Drafts.Rounds(Asked, seed).Verdict!);
            untold += Points(Audit.Of(new Scene(plain.Routine!.Brief with { Acts = DraftBrief.Complete(Asked, Drafts.Book).Acts }, Drafts.Book), plain.Routine));
        }

        output.WriteLine($"{told} points of story and climax with acts, {untold} without");
        Assert.Equal(0, told);
        Assert.True(untold >= 6, $"{untold} points without acts: the comparison says nothing");
    }

    /// <summary>What CP-SAT counts in its windows the audit counts, too: the loop throws where they differ.</summary>
    [Fact]
    public void Cp_sat_counts_the_same()
    {
        var loop = new RollingLoop(new Scene(DraftBrief.Complete(Asked with { Length = new Length(null, 12, 2), Setbacks = 1, Acts = [new Act(50, HeroStanding.Even, 0), new Act(50, HeroStanding.InTrouble, 1)] }, Drafts.Book), Drafts.Book));
        var routine = Enumerable.Range(1, 6).Select(seed => loop.Attempt(seed, CancellationToken.None)).FirstOrDefault(r => r is not null);
        Assert.NotNull(routine);
    }

    [Theory]
    [InlineData(15, null, null, 0)]
    [InlineData(16, null, null, 3)]
    [InlineData(null, 32, null, 3)]
    [InlineData(24, null, 0, 0)]
    [InlineData(24, null, 4, 3)]
    public void A_draft_long_enough_that_bears_a_setback_has_three_acts(int? moves, int? counts, int? setbacks, int acts)
    {
        var brief = DraftBrief.Complete(new Brief { Attackers = [new AttackerPart { Name = "Bruno" }], Length = new Length(counts, moves, 1), Setbacks = setbacks }, Drafts.Book);
        Assert.Equal(acts, brief.Acts!.Count);
        Assert.Equal(acts == 0 ? 0 : 100, brief.Acts.Sum(a => a.Percent));
        Assert.Equal(acts == 0 ? setbacks ?? 0 : setbacks, brief.Setbacks);
        Assert.True(acts == 0 || brief.Acts.Sum(a => a.FewestSetbacks) == (setbacks ?? 1));
    }

    [Fact]
    public void Whoever_wants_no_acts_gets_none() => Assert.Empty(DraftBrief.Complete(Asked with { Acts = [] }, Drafts.Book).Acts!);
}
