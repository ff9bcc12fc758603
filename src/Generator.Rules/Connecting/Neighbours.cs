using Generator.Domain;
using Generator.Library;
using Generator.Rules.Replaying;

namespace Generator.Rules.Connecting;

/// <summary>
/// What may come before and after a technique on the same attacker within two half counts: hands, stance, bound, posture and turn allow it.
/// Distances and the length of the opening are left to the rules. Both sides of a technique count as one.
/// </summary>
public sealed class Neighbours
{
    private readonly FormSteps steps;
    private readonly Book book;

    /// <summary>How moves leave hero and target, and by which techniques.</summary>
    private readonly IReadOnlyDictionary<(HeroForm After, Posture Leaves), SortedSet<int>> outcomes;

    public Neighbours(Book book)
    {
        this.book = book;
        steps = new FormSteps(book);
        outcomes = FormWalk.Of(book).Outcomes;
    }

    /// <summary>Techniques that may come right before, by base id in the order of the book.</summary>
    public IReadOnlyList<Technique> Before(string baseId) => Named(outcomes.Where(o => Sides(baseId).Any(t => Follows(o.Key.After, o.Key.Leaves, t))).SelectMany(o => o.Value));

    /// <summary>Techniques that may come right after.</summary>
    public IReadOnlyList<Technique> After(string baseId)
    {
        var sides = Sides(baseId).ToList();
        var ends = outcomes.Where(o => sides.Exists(o.Value.Contains)).Select(o => o.Key).ToList();
        return Named(Enumerable.Range(0, book.Techniques.Count).Where(t => ends.Exists(e => Follows(e.After, e.Leaves, t))));
    }

    private bool Follows(HeroForm form, Posture posture, int technique)
    {
        foreach (var gap in (ReadOnlySpan<int>)[Connections.Gap, 0])
        {
            if (posture.IsTied())
            {
                for (var who = 0; who < HeroForm.MostTies; who++)
                {
                    if (form[who].Posture == posture && steps.OnTied(form, gap, technique, who).Any())
                    {
                        return true;
                    }
                }
            }
            else if (steps.OnPosture(form, gap, technique, posture).Any())
            {
                return true;
            }
        }

        return false;
    }

    private IEnumerable<int> Sides(string baseId) => Enumerable.Range(0, book.Techniques.Count).Where(t => string.Equals(book.Techniques[t].BaseId, baseId, StringComparison.Ordinal));

    private IReadOnlyList<Technique> Named(IEnumerable<int> techniques) =>
        [.. techniques.Distinct().Order().Select(t => book.Techniques[t]).DistinctBy(t => t.BaseId, StringComparer.Ordinal)];
}
