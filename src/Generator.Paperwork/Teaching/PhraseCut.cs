using Generator.Rules.Replaying;

namespace Generator.Paperwork.Teaching;

/// <summary>
/// Cuts a routine into phrases at the most stable moments: the exact shortest path through the moves, where a step of two to six moves is a
/// phrase and costs the carry-over at its end. Among equals the one whose phrases come nearest to five moves, then the one with the shorter first phrases.
/// </summary>
public static class PhraseCut
{
    public static IReadOnlyList<Phrase> Of(IReadOnlyList<Step> steps) => Of(CarryOver.Of(steps));

    /// <param name="carryOver">For each move, what stopping after it carries over; the last entry is not used.</param>
    public static IReadOnlyList<Phrase> Of(IReadOnlyList<int> carryOver)
    {
        var count = carryOver.Count;
        if (count <= Phrase.Fewest)
        {
            return count == 0 ? [] : [new Phrase(1, 1, count)];
        }

        var rest = new Cost?[count];
        var stop = new int[count];
        rest[count - 1] = default(Cost);
        for (var from = count - 2; from >= 0; from--)
        {
            for (var to = from + Phrase.Fewest - 1; to < Math.Min(count, from + Phrase.Most); to++)
            {
                if (rest[to] is { } after && after.With(to == count - 1 ? 0 : carryOver[to], to - from + 1) is var cost && (rest[from] is not { } best || cost.IsLess(best)))
                {
                    (rest[from], stop[from]) = (cost, to);
                }
            }
        }

        var phrases = new List<Phrase>();
        for (var from = 0; from < count - 1; from = stop[from])
        {
            phrases.Add(new Phrase(phrases.Count + 1, from + 1, stop[from] + 1));
        }

        return phrases;
    }

    private readonly record struct Cost(int Carried, int Unevenness)
    {
        public Cost With(int carried, int moves) => new(Carried + carried, Unevenness + ((moves - Phrase.Preferred) * (moves - Phrase.Preferred)));

        public bool IsLess(Cost other) => (Carried, Unevenness).CompareTo((other.Carried, other.Unevenness)) < 0;
    }
}
