using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Judging;
using Generator.Solver.Explaining;
using Generator.Solver.Tests.Constructing;
using Generator.Testing;

namespace Generator.Solver.Tests.Explaining;

public class ExplainTests
{
    private static readonly ExplainOptions Options = new() { Time = TimeSpan.FromSeconds(60), Patience = TimeSpan.FromSeconds(4) };

    [Fact]
    public void A_brief_that_can_be_drafted_has_nothing_to_explain()
    {
        var explanation = Explain.Of(Drafts.Plain(), Drafts.Book, Options);
        Assert.Equal(Answer.Solvable, explanation.Brief);
        Assert.Empty(explanation.Clashes);
    }

    [Fact]
    public void A_clash_is_told_in_the_words_of_the_brief_with_the_ways_out()
    {
        var brief = Drafts.Plain(new Moment([new MomentMove("outside-reap", "Wanda", null, null)], null, null)) with
        {
            Attackers = [new AttackerPart { Name = "Bruno", Skill = Skill.Stunt }, new AttackerPart { Name = "Wanda", Limits = ["no-back-fall"] }],
        };
        var explanation = Explain.Of(brief, Drafts.Book, Options);
        Assert.Equal(Answer.Impossible, explanation.Brief);
        Assert.True(explanation.Proven);
        Assert.Equal(["the hero moment outside-reap on Wanda", "Wanda with the limit no-back-fall"], explanation.Clashes[0].Order(StringComparer.Ordinal).Reverse());
        Assert.Contains(explanation.GiveUps, g => g.Any(w => w.Contains("no-back-fall", StringComparison.Ordinal)));
        Assert.Contains(explanation.GiveUps, g => g.Any(w => w.Contains("outside-reap", StringComparison.Ordinal)));
    }

    /// <summary>Thrown in counts in which they have not come in yet: arithmetic does not see it, a plan of the whole does.</summary>
    [Fact]
    public void What_arithmetic_does_not_see_a_plan_of_the_whole_proves()
    {
        var brief = Drafts.Plain(new Moment([new MomentMove("outside-reap", "Bruno", null, null)], new HalfCounts(6), new HalfCounts(12))) with
        {
            Length = new Length(16, null, 2),
            Attackers = [new AttackerPart { Name = "Bruno", Skill = Skill.Stunt, Entrance = new HalfCounts(20) }, new AttackerPart { Name = "Wanda", Skill = Skill.Stunt }],
        };
        Assert.Empty(BriefChecks.Clash(new Scene(DraftBrief.Complete(brief, Drafts.Book), Drafts.Book)));

        var drafted = Drafts.Draft(brief, seconds: 60);
        Assert.Equal(DraftStatus.Impossible, drafted.Status);
        Assert.Contains("taken together", drafted.Clash[0], StringComparison.Ordinal);

        var explanation = Explain.Of(brief, Drafts.Book, Options);
        Assert.Equal(Answer.Impossible, explanation.Brief);
        Assert.Contains(explanation.Clashes[0], w => w.Contains("outside-reap", StringComparison.Ordinal));
        Assert.Contains(explanation.Clashes[0], w => w.Contains("Bruno not in before", StringComparison.Ordinal));
    }

    [Fact]
    public void A_proven_clash_of_random_small_briefs_is_impossible_and_minimal_as_far_as_arithmetic_goes()
    {
        var proven = 0;
        for (var seed = 1; seed <= 12; seed++)
        {
            var chance = new Chance(seed);
            var brief = DraftBrief.Complete(Drafts.Small(seed) with { Length = new Length(chance.Whole(4, 8), null, 0), Setbacks = chance.Whole(2, 6), Pauses = chance.Whole(1, 4) }, Drafts.Book);
            var statements = Statements.Of(brief);
            Answer Arithmetic(ulong set) => BriefChecks.Clash(new Scene(Statements.Keep(brief, statements, set), Drafts.Book)).Count > 0 ? Answer.Impossible : Answer.Unknown;
            var everything = (1UL << statements.Count) - 1;
            if (Arithmetic(everything) != Answer.Impossible)
            {
                continue;
            }

            proven++;
            var clash = new Clashes(statements.Count, Arithmetic).Shrink(everything, Enumerable.Range(0, statements.Count));
            Assert.Equal(Answer.Impossible, Arithmetic(clash));
            Assert.All(Enumerable.Range(0, statements.Count).Where(i => (clash & (1UL << i)) != 0), i => Assert.NotEqual(Answer.Impossible, Arithmetic(clash & ~(1UL << i))));
        }

        Assert.True(proven >= 6, $"only {proven} of 12");
    }

    [Fact]
    public void A_stop_leaves_the_brief_unknown()
    {
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        var explanation = Explain.Of(Drafts.Plain(), Drafts.Book, Options, null, stop.Token);
        Assert.Equal(Answer.Unknown, explanation.Brief);
        Assert.False(explanation.Proven);
        Assert.False(explanation.Complete);
    }

    [Fact]
    public void What_would_do_as_well_passes_the_audit_and_what_is_excluded_does_not()
    {
        var routine = Drafts.Draft(Drafts.Plain(), 2).Routine!;
        var explanation = MoveExplanation.Of(routine, 0, Drafts.Book);
        Assert.Equal(Drafts.Book.Techniques.Count - 1, explanation.Fitting.Count + explanation.Excluded.Sum(e => e.Candidates.Count));
        Assert.NotEmpty(explanation.Excluded);
        Assert.All(explanation.Fitting, f => Assert.True(Audit.Of(explanation.Scene, Swapped(routine, f)).IsClean));
        Assert.All(explanation.Excluded.Select(e => (e.Rule, e.Candidates[0])), e =>
        {
            Assert.Contains(Audit.Of(explanation.Scene, Swapped(routine, e.Item2)).Findings, f => f.Severity >= Severity.Broken && f.Rule == e.Rule);
        });
    }

    private static Routine Swapped(Routine routine, MoveCandidate candidate) =>
        routine with { Moves = [routine.Moves[0] with { Technique = candidate.Technique.Id, Reaction = candidate.Reaction }, .. routine.Moves.Skip(1)] };
}
