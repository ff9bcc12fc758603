using Generator.Domain;

namespace Generator.Rules.Shapes;

/// <summary>
/// Rhythm: exchanges differ in length, gaps between contacts differ, flurries end in a rest. What the ear notes is how many neighbouring intervals are equal
/// (Condit-Schultz 2019 on nPVI); rhythm of no single time scale holds attention in film cutting (Cutting, DeLong and Nothelfer 2010, Psychological Science 21). Both from memory.
/// </summary>
internal static class RhythmFigures
{
    private const string Rule = "rhythm";

    /// <summary>
    /// equal-lengths: exchanges that are the fourth or more in a row with the same number of moves.
    /// long-exchanges: exchanges of five moves and more.
    /// equal-gaps: of a hundred neighbours among the intervals from contact moment to contact moment, those that are equal.
    /// flurries: flurries (three contact moments or more, each within a count of the one before) that are followed by 2½ counts without a contact, or by the end.
    /// </summary>
    public static IEnumerable<Figure> Of(FightShape shape)
    {
        var isLong = Figures.IsJudged(shape, FightRule.Rhythm);
        var (at, alike) = Exchange.LongestAlike(shape.Exchanges);
        yield return Figure.Of(Rule, "equal-lengths", "exchanges that are the fourth or more of one length in a row", "exchanges", shape.Exchanges.Count < 2 ? null : Exchange.TooAlike(shape.Exchanges), null, 0, () => Alike(shape, at, alike));
        yield return Figure.Of(Rule, "long-exchanges", "exchanges of five moves and more", "exchanges", isLong ? shape.Exchanges.Count(e => e.Moves >= Exchange.LongFrom) : null, 1, null, () => Longer(shape));
        yield return Figure.Of(Rule, "equal-gaps", "neighbouring gaps between contacts that are equal", "%", Figure.PercentUp(shape.Intervals.EqualPairs, shape.Intervals.Pairs), null, 40, () => Gaps(shape));
        yield return Figure.Of(Rule, "flurries", "flurries that end in a rest", "flurries", isLong ? shape.Flurries.Count(f => f.Rests) : null, Flurry.Wanted, null, () => Flurries(shape));
    }

    private static string Alike(FightShape shape, int at, int alike)
    {
        var middle = shape.Exchanges[at + (alike / 2)];
        return FormattableString.Invariant($"{alike} exchanges of {Amounts.Many(middle.Moves, "move")} follow one another from {Figures.Move(shape, shape.Exchanges[at].First)}: let the one at {Figures.Move(shape, middle.First)} go on longer, or break off.");
    }

    private static string Longer(FightShape shape)
    {
        var longest = shape.Exchanges.MaxBy(e => e.Moves);
        return FormattableString.Invariant($"The longest exchange has {longest.Moves} moves, from {Figures.Move(shape, longest.First)} against {Figures.Name(shape, longest.Attacker)}: stay with them for five.");
    }

    private static string Gaps(FightShape shape)
    {
        var (run, from) = Intervals.LongestRun(shape.Contacts);
        return FormattableString.Invariant($"{shape.Intervals.EqualPairs} of {shape.Intervals.Pairs} gaps are as long as the one before; from {Figures.At(from)} there are {run} alike in a row: put one contact half a count sooner or later there.");
    }

    private static string Flurries(FightShape shape)
    {
        if (shape.Flurries.FirstOrDefault(f => !f.Rests) is { Contacts: > 0, Rest: { } rest } breathless)
        {
            return $"The flurry from {Figures.At(breathless.From)} to {Figures.At(breathless.To)} has only {Words.Counts(rest)} before the next contact: leave 2½ counts of rest after it.";
        }

        var gap = shape.Contacts.Zip(shape.Contacts.Skip(2)).OrderBy(p => p.Second.Time - p.First.Time).FirstOrDefault();
        return shape.Contacts.Count < 3
            ? "There are fewer than three contacts: a flurry needs three, each within a count of the one before."
            : $"Three contacts each within a count, then 2½ counts of rest, make one; nearest to it are those from {Figures.At(gap.First.Time)} to {Figures.At(gap.Second.Time)}.";
    }
}
