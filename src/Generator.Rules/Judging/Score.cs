using Generator.Rules.Replaying;

namespace Generator.Rules.Judging;

/// <summary>The memories of all rules after some moves, with the points and forbidden findings so far. Immutable.</summary>
public sealed class Score
{
    private readonly object?[] memories;

    private Score(object?[] memories, int[] pointsByRule, int forbidden)
    {
        this.memories = memories;
        PointsByRule = pointsByRule;
        Forbidden = forbidden;
        Points = pointsByRule.Sum();
    }

    /// <summary>Points so far.</summary>
    public int Points { get; }

    /// <summary>Broken and unsafe findings so far.</summary>
    public int Forbidden { get; }

    /// <summary>Points so far of each rule of <see cref="RuleBook.All"/>.</summary>
    public IReadOnlyList<int> PointsByRule { get; }

    /// <summary>What the rules know before the first move.</summary>
    public static Score Begin(Scene scene, FightState open, List<Domain.Finding>? words = null)
    {
        var first = new object?[RuleBook.All.Count];
        return Fold(new int[first.Length], 0, first, words, (rule, i, tally) => first[i] = rule.Begin(scene, open, tally));
    }

    /// <summary>The score after one more step.</summary>
    public Score Observe(Scene scene, Step step, List<Domain.Finding>? words = null)
    {
        var next = new object?[memories.Length];
        return Fold(PointsByRule, Forbidden, next, words, (rule, i, tally) => next[i] = rule.Observe(scene, memories[i], step, tally));
    }

    /// <summary>The score of the routine when it ends here.</summary>
    public Score Close(Scene scene, FightState end, List<Domain.Finding>? words = null) =>
        Fold(PointsByRule, Forbidden, memories, words, (rule, i, tally) => rule.Close(scene, memories[i], end, tally));

    /// <summary>What a rule remembers, for the solver's side to start from.</summary>
    public object? MemoryOf(string ruleId) => memories[RuleBook.IndexOf(ruleId)];

    private static Score Fold(IReadOnlyList<int> points, int forbidden, object?[] memories, List<Domain.Finding>? words, Action<Rule, int, Tally> look)
    {
        var sums = new int[points.Count];
        for (var i = 0; i < sums.Length; i++)
        {
            var tally = new Tally(words is not null);
            look(RuleBook.All[i], i, tally);
            sums[i] = points[i] + tally.Points;
            forbidden += tally.Forbidden;
            words?.AddRange(tally.Findings);
        }

        return new Score(memories, sums, forbidden);
    }
}
