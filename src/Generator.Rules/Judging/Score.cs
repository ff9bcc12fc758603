using Generator.Rules.Replaying;
using Generator.Rules.Rules;

namespace Generator.Rules.Judging;

/// <summary>The memories of all rules after some moves, with the points and forbidden findings so far. Immutable.</summary>
public sealed class Score
{
    /// <summary>Rules that keep a memory for the ally beside that for the hero, by position.</summary>
    private static readonly int[] EachTheirOwn = [.. Enumerable.Range(0, RuleBook.All.Count).Where(i => RuleBook.All[i].Looks == Whose.Each)];

    private static readonly int SpacingAt = RuleBook.IndexOf("spacing");

    private readonly object?[] memories;
    private readonly object?[]? allys;

    private Score(object?[] memories, object?[]? allys, IReadOnlyList<int> pointsByRule, Tally tally, Score? before)
    {
        (this.memories, this.allys) = (memories, allys);
        PointsByRule = pointsByRule;
        Points = tally.Points + (before?.Points ?? 0);
        Forbidden = tally.Forbidden + (before?.Forbidden ?? 0);
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
        var tally = new Tally(words is not null);
        var first = new object?[RuleBook.All.Count];
        var points = new int[first.Length];
        for (var i = 0; i < first.Length; i++)
        {
            var before = tally.Points;
            first[i] = RuleBook.All[i].Begin(scene, open, tally);
            points[i] = tally.Points - before;
        }

        object?[]? second = null;
        if (open.Other is not null)
        {
            (var theirs, second) = (open.ForOther(scene.Marks), new object?[first.Length]);
            foreach (var i in EachTheirOwn)
            {
                second[i] = RuleBook.All[i].Begin(scene.Other!, theirs, tally);
            }
        }

        words?.AddRange(tally.Findings);
        return new Score(first, second, points, tally, null);
    }

    /// <summary>The score after one more step.</summary>
    public Score Observe(Scene scene, Step step, List<Domain.Finding>? words = null)
    {
        var tally = new Tally(words is not null);
        var next = memories.ToArray();
        var theirs = step.IsByAlly ? allys!.ToArray() : allys;
        var points = PointsByRule;
        for (var i = 0; i < next.Length; i++)
        {
            var (before, rule) = (tally.Points, RuleBook.All[i]);
            if (step.IsByAlly && rule.Looks == Whose.Hero)
            {
                continue;
            }

            ref var memory = ref (step.IsByAlly && rule.Looks == Whose.Each ? theirs! : next)[i];
            memory = rule.Observe(step.IsByAlly ? scene.Other! : scene, memory, step, tally);
            points = Added(points, i, tally.Points - before);
        }

        words?.AddRange(tally.Findings);
        return new Score(next, theirs, points, tally, this);
    }

    /// <summary>The score after one more step; null as soon as a rule forbids it.</summary>
    public Score? Allowed(Scene scene, Step step)
    {
        if (step.IsTooNear(scene))
        {
            return null;
        }

        var tally = new Tally(inWords: false);
        object?[]? next = null;
        var points = PointsByRule;
        foreach (var (i, rule) in RuleBook.Sifted)
        {
            var before = tally.Points;
            var memory = rule.Observe(scene, memories[i], step, tally);
            if (tally.Forbidden > 0)
            {
                return null;
            }

            if (!ReferenceEquals(memory, memories[i]))
            {
                (next ??= [.. memories])[i] = memory;
            }

            points = Added(points, i, tally.Points - before);
        }

        return new Score(next ?? memories, allys, points, tally, this);
    }

    /// <summary>Told without working out the step: a rule forbids this move whatever comes of it. False says nothing.</summary>
    public bool Refuses(Scene scene, FightState before, in Row row) => Spacing.Refuses(scene, memories[SpacingAt], before, row);

    /// <summary>The score of the routine when it ends here.</summary>
    public Score Close(Scene scene, FightState end, List<Domain.Finding>? words = null)
    {
        var tally = new Tally(words is not null);
        var points = PointsByRule;
        var last = end.Other is null ? end : end with { Time = end.Latest };
        for (var i = 0; i < memories.Length; i++)
        {
            var before = tally.Points;
            RuleBook.All[i].Close(scene, memories[i], RuleBook.All[i].Looks == Whose.Both ? last : end, tally);
            points = Added(points, i, tally.Points - before);
        }

        foreach (var i in end.Other is null ? [] : EachTheirOwn)
        {
            var before = tally.Points;
            RuleBook.All[i].Close(scene.Other!, allys![i], end.ForOther(scene.Marks), tally);
            points = Added(points, i, tally.Points - before);
        }

        words?.AddRange(tally.Findings);
        return new Score(memories, allys, points, tally, this);
    }

    /// <summary>The points with some more for one rule. Most steps cost nothing: then it is the same list, shared.</summary>
    private static IReadOnlyList<int> Added(IReadOnlyList<int> points, int rule, int more)
    {
        if (more == 0)
        {
            return points;
        }

        int[] added = [.. points];
        added[rule] += more;
        return added;
    }

    /// <summary>What a rule remembers, for the solver's side to start from.</summary>
    public object? MemoryOf(string ruleId) => MemoryOf(RuleBook.IndexOf(ruleId));

    /// <summary>The same by the rule's position in <see cref="RuleBook.All"/>.</summary>
    public object? MemoryOf(int rule) => memories[rule];
}
