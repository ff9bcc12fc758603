using Generator.Domain;
using Generator.Rules.Judging;
using Generator.Rules.Replaying;
using Generator.Rules.Rules;

namespace Generator.Rules.Tests.Fights;

/// <summary>Lets one rule alone judge a fight: <c>Verify.Rule("grip").Given(fight).Finds(1, 2)</c>.</summary>
internal sealed class Verify
{
    private readonly Rule rule;

    private Verify(Rule rule) => this.rule = rule;

    public static Verify Rule(string id) => new(RuleBook.All[RuleBook.IndexOf(id)]);

    /// <summary>Folds the rule over the fight, once in words and once counting only; the two must agree.</summary>
    public Found Given(Fight fight)
    {
        var told = Fold(fight, new Tally(true));
        var counted = Fold(fight, new Tally(false));
        Assert.Equal((told.Points, told.Forbidden), (counted.Points, counted.Forbidden));
        Assert.Empty(counted.Findings);
        Assert.Equal(told.Points, told.Findings.Sum(f => f.Points));
        Assert.Equal(told.Forbidden, told.Findings.Count(f => f.Severity >= Severity.Broken));
        Assert.All(told.Findings, f => AssertWellSaid(f, fight));
        return new Found(told.Findings);
    }

    private Tally Fold(Fight fight, Tally tally)
    {
        var scene = fight.Scene;
        var steps = Replay.Of(scene, fight.Routine);
        var state = steps.Count > 0 ? steps[0].Before : Replay.Open(scene, fight.Placements);
        var memory = rule.Begin(scene, state, tally);
        foreach (var step in steps)
        {
            memory = rule.Observe(scene, memory, step, tally);
            state = step.After;
        }

        rule.Close(scene, memory, state, tally);
        return tally;
    }

    /// <summary>What holds of every finding: it is this rule's, no graver than the rule may be, names people, and reads as a sentence.</summary>
    private void AssertWellSaid(Finding finding, Fight fight)
    {
        Assert.Equal(rule.Id, finding.Rule);
        Assert.True(finding.Severity <= rule.Worst, finding.Message);
        Assert.InRange(finding.Move, 0, fight.Moves.Count);
        Assert.NotEmpty(finding.Who);
        Assert.NotEmpty(finding.Advice);
        Assert.EndsWith(".", finding.Message, StringComparison.Ordinal);
        Assert.False(char.IsLower(finding.Message[0]), finding.Message);
        Assert.Equal(finding.Measured is null, finding.Unit.Length == 0);
        Assert.Equal(finding.Severity == Severity.Rough, finding.Points > 0);
        Assert.DoesNotContain("  ", finding.Message, StringComparison.Ordinal);
    }
}
