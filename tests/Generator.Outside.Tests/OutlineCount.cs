namespace Generator.Outside.Tests;

/// <summary>What a look at outlines has covered, in half counts of one attacker, and the pairs that stood in each other.</summary>
internal sealed class OutlineCount
{
    public Dictionary<string, int> Covered { get; } = new(StringComparer.Ordinal)
    {
        ["standing"] = 0,
        ["kneeling"] = 0,
        ["held"] = 0,
        ["lying"] = 0,
        ["falling"] = 0,
        ["entering"] = 0,
        ["coming in"] = 0,
        ["beside things"] = 0,
        ["pairs"] = 0,
        ["pairs of one move"] = 0,
    };

    public List<string> Faults { get; } = [];

    public void See(string what) => Covered[what]++;

    public override string ToString() => string.Join(", ", Covered.Select(c => $"{c.Key} {c.Value}")) + $"; {Faults.Count} faults";
}
