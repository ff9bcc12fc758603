using FsCheck;
using FsCheck.Fluent;
using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Judging;
using Generator.Solver.Explaining;
using Generator.Solver.Questions;
using Generator.Solver.Refuting;
using Generator.Solver.Tests.Constructing;
using Generator.Testing;
using Xunit.Abstractions;

namespace Generator.Solver.Tests.Explaining;

public class ExplainTests(ITestOutputHelper output)
{
    /// <summary>Many times what a draft or a proof of these briefs takes, also beside eight busy loops; only what stays unknown takes all of it.</summary>
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(8);

    private static readonly ExplainOptions Options = new() { Time = Drafts.Hang, Patience = Patience };

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
        Assert.Contains(explanation.GiveUps, g => g.Words.Any(w => w.Contains("no-back-fall", StringComparison.Ordinal)));
        Assert.Contains(explanation.GiveUps, g => g.Words.Any(w => w.Contains("outside-reap", StringComparison.Ordinal)));
    }

    [Fact]
    public void That_no_setback_may_come_is_a_statement_as_well()
    {
        var brief = Drafts.Plain(new Moment([new MomentMove("hugged-from-behind", null, null, null)], null, null)) with { Setbacks = 0 };
        var explanation = Explain.Of(brief, Drafts.Book, Options);
        Assert.Equal(Answer.Impossible, explanation.Brief);
        Assert.Equal(["no setback", "the hero moment hugged-from-behind"], explanation.Clashes[0].Order(StringComparer.Ordinal));
        Assert.Contains(explanation.GiveUps, g => g.Words is ["1 setback"]);
    }

    [Fact]
    public void Where_somebody_cannot_go_out_a_way_out_is_that_they_still_stand()
    {
        var everybody = Drafts.Plain() with { Ending = new Ending(["Bruno", "Wanda"], null) };
        var statement = Statements.Of(everybody, Drafts.Book.Settle).Single(s => s.Words == "Wanda out at the end");
        Assert.Equal("Wanda may still be standing at the end", statement.Instead);
        Assert.Equal(["Bruno"], statement.Without(everybody).Ending!.Out);
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
        var drafted = Drafts.Ended(brief);
        Assert.Equal(DraftStatus.Impossible, drafted.Status);
        Assert.Equal(["the hero moment outside-reap on Bruno starting between counts 4 and 7", "Bruno not in play before count 11"], drafted.Clash);

        // What to give up is not asked for: the first word of the explanation ends it.
        using var said = new CancellationTokenSource();
        var explanation = Explain.Of(brief, Drafts.Book, Options, _ => said.Cancel(), said.Token);
        Assert.Equal(Answer.Impossible, explanation.Brief);
        Assert.Contains(explanation.Clashes[0], w => w.Contains("outside-reap", StringComparison.Ordinal));
        Assert.Contains(explanation.Clashes[0], w => w.Contains("Bruno not in play before", StringComparison.Ordinal));
    }

    [Fact]
    public void A_proven_clash_of_random_small_briefs_is_impossible_and_minimal_as_far_as_arithmetic_goes()
    {
        var proven = 0;
        for (var seed = 1; seed <= 12; seed++)
        {
            var chance = new Chance(seed);
            var brief = DraftBrief.Complete(Drafts.Small(seed) with { Length = new Length(chance.Whole(4, 8), null, 0), Setbacks = chance.Whole(2, 6), Pauses = chance.Whole(1, 4) }, Drafts.Book);
            var statements = Statements.Of(brief, Drafts.Book.Settle);
            Answer Arithmetic(ulong set) => Refutations.Reasons(new Scene(Statements.Keep(brief, statements, set), Drafts.Book)).Count > 0 ? Answer.Impossible : Answer.Unknown;
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

    /// <summary>
    /// The whole way on random small briefs with a moment, an entrance and a length that often do not go together: a clash is impossible, asked anew, and
    /// without any one of its statements it never is, and nearly always there is a routine, asked anew.
    /// </summary>
    [Fact]
    public void Clashes_of_random_small_briefs_are_impossible_and_minimal()
    {
        var (covered, shown) = (0, 0);
        Check.One(Config.QuickThrowOnFailure.WithMaxTest(3).WithReplay(7, 9), Prop.ForAll(Gen.Choose(0, 1_000_000).ToArbitrary(), seed =>
        {
            var (isClash, isMinimal) = CheckClash(seed);
            (covered, shown) = (covered + (isClash ? 1 : 0), shown + (isMinimal ? 1 : 0));
        }));
        output.WriteLine($"{covered} clashes, {shown} shown to be minimal by drafts");
        Assert.True(covered >= 2 && shown >= 1, $"{covered} clashes, {shown} shown to be minimal");
    }

    /// <returns>Whether the brief is proven impossible, and whether a draft was found without each statement of the clash.</returns>
    private static (bool IsClash, bool IsMinimal) CheckClash(int seed)
    {
        var chance = new Chance(seed);
        var (from, entrance) = (chance.Whole(2, 12), chance.Whole(4, 24));
        var technique = chance.One<string>(["outside-reap", "hip-throw", "leg-pick", "finishing-hook", "side-kick"]);
        var second = chance.Percent(40) ? new Moment([new MomentMove(chance.One<string>(["side-kick", "leg-pick"]), "Bruno", null, null)], new HalfCounts(from + chance.Whole(1, 12)), new HalfCounts(from + 14)) : null;
        var brief = Drafts.Plain([.. new[] { new Moment([new MomentMove(technique, "Bruno", null, null)], new HalfCounts(from), new HalfCounts(from + chance.Whole(0, 6))), second }.OfType<Moment>()]) with
        {
            Length = new Length(chance.Whole(14, 20), null, 2),
            Attackers = [new AttackerPart { Name = "Bruno", Skill = Skill.Stunt, Entrance = new HalfCounts(entrance), FallsPerRun = chance.Maybe(() => 1) }, new AttackerPart { Name = "Wanda", Skill = Skill.Stunt }],
        };
        var complete = DraftBrief.Complete(brief, Drafts.Book);
        var statements = Statements.Of(complete, Drafts.Book.Settle);
        var oracle = new BriefOracle(Drafts.Book, 1, Patience, CancellationToken.None);
        Answer Asked(ulong set) => oracle.Ask(Statements.Keep(complete, statements, set));
        var everything = (1UL << statements.Count) - 1;
        if (!oracle.IsProven(complete))
        {
            return (false, false);
        }

        var clash = new Clashes(statements.Count, Asked, set => oracle.IsProven(Statements.Keep(complete, statements, set))).Shrink(everything, Enumerable.Range(0, statements.Count));
        var fresh = new BriefOracle(Drafts.Book, 2, Patience, CancellationToken.None);
        Assert.Equal(Answer.Impossible, fresh.Ask(Statements.Keep(complete, statements, clash)));
        var without = Enumerable.Range(0, statements.Count).Where(i => (clash & (1UL << i)) != 0).Select(i => fresh.Ask(Statements.Keep(complete, statements, clash & ~(1UL << i)))).ToList();
        Assert.DoesNotContain(Answer.Impossible, without);
        return (true, without.TrueForAll(a => a == Answer.Solvable));
    }

    [Fact]
    public void A_stop_leaves_the_brief_unknown()
    {
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        var explanation = Explain.Of(Drafts.Plain(), Drafts.Book, Options, null, stop.Token);
        Assert.Equal(Answer.Unknown, explanation.Brief);
        Assert.Empty(explanation.Clashes);
        Assert.False(explanation.Proven);
        Assert.False(explanation.Complete);
    }

    [Fact]
    public void What_would_do_as_well_passes_the_audit_and_what_is_excluded_does_not()
    {
        var routine = Drafts.OfPlain(2);
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
