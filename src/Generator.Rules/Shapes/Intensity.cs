using Generator.Domain;

namespace Generator.Rules.Shapes;

/// <summary>How much happens, over time: contacts and their weight in every stretch of four counts, and by thirds of the fight.</summary>
/// <param name="Contacts">Contacts in each stretch.</param>
/// <param name="Weight">Their weights together; a move that has two contacts (a block that hits) gives its weight once.</param>
/// <param name="Thirds">Contacts in each third of the time.</param>
public sealed record Intensity(IReadOnlyList<int> Contacts, IReadOnlyList<int> Weight, IReadOnlyList<int> Thirds)
{
    /// <summary>Half counts of a stretch.</summary>
    public const int Stretch = 4 * HalfCounts.PerCount;

    /// <param name="contacts">In order of time.</param>
    /// <param name="end">Half counts that the fight lasts.</param>
    public static Intensity Of(IReadOnlyList<Contact> contacts, int end)
    {
        var (many, weight, thirds) = (new int[Math.Max(1, (end + Stretch) / Stretch)], new int[Math.Max(1, (end + Stretch) / Stretch)], new int[3]);
        var seen = new HashSet<int>();
        foreach (var contact in contacts)
        {
            var at = Math.Clamp(contact.Time / Stretch, 0, many.Length - 1);
            many[at]++;
            weight[at] += seen.Add(contact.Move) ? contact.Weight : 0;
            thirds[Math.Clamp(contact.Time * 3 / Math.Max(1, end), 0, 2)]++;
        }

        return new Intensity(many, weight, thirds);
    }
}
