using Generator.Rules;

namespace Generator.Paperwork.Text;

/// <summary>What a brief takes out of the library, for people.</summary>
public static class AvailabilityLines
{
    /// <summary>One line: how much is out; empty when nothing is.</summary>
    public static string Short(Availability availability)
    {
        List<string> parts = [];
        Add(availability.Techniques.Count, "technique");
        Add(availability.Attacks.Count, "attack");
        Add(availability.Reactions.Count, "reaction");
        return parts.Count == 0 ? string.Empty : $"Skill, limits, wardrobe and floor leave out {string.Join(", ", parts)}.";

        void Add(int count, string what)
        {
            if (count > 0)
            {
                parts.Add(Words.Many(count, what));
            }
        }
    }

    /// <summary>Everything that is out, each with the reason.</summary>
    public static string Of(Availability availability)
    {
        var lines = Part("techniques", availability.Techniques).Concat(Part("attacks", availability.Attacks)).Concat(Part("reactions", availability.Reactions));
        return string.Concat(lines.Select(l => l + "\n"));
    }

    private static IEnumerable<string> Part(string what, IReadOnlyList<(string Id, string Reason)> entries) =>
        [$"LEFT OUT, {what} ({Words.Number(entries.Count)})", .. entries.SelectMany(e => Page.Row(2, (e.Id, 26), (e.Reason + ".", 50))), string.Empty];
}
