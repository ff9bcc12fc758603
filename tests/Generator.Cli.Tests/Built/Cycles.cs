namespace Generator.Cli.Tests.Built;

/// <summary>Which folders use one another in a ring.</summary>
internal static class Cycles
{
    /// <summary>Every ring as the sorted names of its folders: sets of two and more in which each reaches each other.</summary>
    public static List<string> Of(IReadOnlyCollection<(string From, string To)> uses)
    {
        var reached = uses.SelectMany(u => new[] { u.From, u.To }).Distinct(StringComparer.Ordinal).ToDictionary(f => f, f => Reached(f, uses), StringComparer.Ordinal);
        return
        [
            .. reached.Keys.Where(f => reached[f].Contains(f))
                .Select(f => string.Join(", ", reached[f].Where(g => reached[g].Contains(f)).Order(StringComparer.Ordinal)))
                .Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal),
        ];
    }

    private static HashSet<string> Reached(string folder, IReadOnlyCollection<(string From, string To)> uses)
    {
        var reached = new HashSet<string>(StringComparer.Ordinal);
        var open = new Stack<string>([folder]);
        while (open.TryPop(out var at))
        {
            foreach (var (_, to) in uses.Where(u => u.From == at))
            {
                if (reached.Add(to))
                {
                    open.Push(to);
                }
            }
        }

        return reached;
    }
}
