namespace Generator.Cli.Tests.Papers;

/// <summary>One thing that a paper says, as it was read back.</summary>
/// <param name="Paper">File name.</param>
/// <param name="Topic">What it is about: "count of a move", "falls".</param>
/// <param name="Key">Of which move, performer, phrase.</param>
/// <param name="Value">What it says; the same on every paper that says anything of it.</param>
internal sealed record Fact(string Paper, string Topic, string Key, string Value)
{
    /// <summary>What papers contradict one another in, or leave out. Empty when all is well.</summary>
    /// <param name="facts">Of all papers.</param>
    public static IReadOnlyList<string> Faults(IReadOnlyCollection<Fact> facts)
    {
        var faults = new List<string>();
        foreach (var same in facts.GroupBy(f => (f.Topic, f.Key)).Where(g => g.Select(f => f.Value).Distinct().Count() > 1))
        {
            faults.Add($"{same.Key.Topic}, {same.Key.Key}: {string.Join("; ", same.GroupBy(f => f.Value).Select(g => $"\"{g.Key}\" on {string.Join(", ", g.Select(f => f.Paper).Distinct())}"))}");
        }

        var all = facts.Select(f => f.Paper).Where(p => PackReading.All.Contains(p)).Concat(Whole.SelectMany(w => w.Papers).Except(PackReading.All)).ToHashSet(StringComparer.Ordinal);
        foreach (var (topic, papers) in Whole)
        {
            var of = facts.Where(f => f.Topic == topic).ToList();
            var keys = of.Select(f => f.Key).Distinct().ToList();
            foreach (var paper in papers.Where(p => all.Contains(p)))
            {
                var missing = keys.Except(of.Where(f => f.Paper == paper).Select(f => f.Key)).ToList();
                if (missing.Count > 0)
                {
                    faults.Add($"{topic}: {paper} says nothing of {string.Join(", ", missing)}");
                }
            }
        }

        return faults;
    }

    /// <summary>Papers that say everything of a topic; others say only what concerns them. The printed pack is not always made.</summary>
    private static readonly (string Topic, string[] Papers)[] Whole =
    [
        ("count of a move", ["wall.txt", "moves.csv", "routine.xlsx", "routine.html", "the hero's part", PackReading.Pages]),
        ("who", ["wall.txt", "moves.csv", "routine.xlsx", "routine.html", PackReading.Pages]),
        ("attack", ["wall.txt", "moves.csv", "routine.xlsx", "routine.html", PackReading.Pages]),
        ("technique", ["wall.txt", "moves.csv", "routine.xlsx", "routine.html", "the hero's part", "tracks.csv", PackReading.Pages]),
        ("reaction", ["wall.txt", "moves.csv", "routine.xlsx", "routine.html", PackReading.Pages]),
        ("fall", ["wall.txt", "moves.csv", "routine.xlsx", "cue-list.txt", "the parts", PackReading.Sheets]),
        ("falls in a run", ["teaching-plan.txt", "the parts", PackReading.Sheets]),
        ("contact", ["the parts", "the hero's part"]),
        ("phrase", ["routine.html", "teaching-plan.txt", PackReading.Pages, PackReading.Sheets]),
        ("number of phrases", ["routine.html", "teaching-plan.txt", "moves.csv", "cue-list.txt"]),
        ("second", ["moves.csv", "routine.xlsx"]),
        ("cast", ["wall.txt", "routine.html", "teaching-plan.txt", "fight-call.txt", PackReading.Sheets]),
    ];
}
