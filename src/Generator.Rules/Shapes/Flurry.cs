using Generator.Domain;

namespace Generator.Rules.Shapes;

/// <summary>Three contacts or more, each within a count of the one before (common practice, no source), and the rest that follows.</summary>
/// <param name="From">Its first contact, in half counts.</param>
/// <param name="To">Its last.</param>
/// <param name="Contacts">Moments of contact, 3 or more.</param>
/// <param name="Rest">Half counts to the next contact; null at the end of the fight.</param>
public readonly record struct Flurry(int From, int To, int Contacts, int? Rest)
{
    /// <summary>Moments of contact that make a flurry.</summary>
    public const int Fewest = 3;

    /// <summary>How many a fight wants. Common practice, no source.</summary>
    public const int Wanted = 2;

    /// <summary>Half counts without contact that the audience takes for a rest: 2½ counts. Common practice, no source.</summary>
    public const int RestFrom = 5;

    /// <summary>What follows is a rest, or the end.</summary>
    public bool Rests => Rest is not < RestFrom;

    public static IReadOnlyList<Flurry> Of(IReadOnlyList<Contact> contacts)
    {
        var times = contacts.Select(c => c.Time).Distinct().Order().ToList();
        var flurries = new List<Flurry>();
        for (var from = 0; from < times.Count;)
        {
            var to = from;
            while (to + 1 < times.Count && times[to + 1] - times[to] <= HalfCounts.PerCount)
            {
                to++;
            }

            if (to - from + 1 >= Fewest)
            {
                flurries.Add(new Flurry(times[from], times[to], to - from + 1, to + 1 < times.Count ? times[to + 1] - times[to] : null));
            }

            from = to + 1;
        }

        return flurries;
    }

    /// <summary>Stretches of <see cref="RestFrom"/> and more without a contact, between contacts.</summary>
    public static int RestsIn(Intervals intervals) => intervals.Lengths.Count(l => l >= RestFrom);
}
