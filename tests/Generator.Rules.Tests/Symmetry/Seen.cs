using Generator.Domain;
using Generator.Rules.Judging;

namespace Generator.Rules.Tests.Symmetry;

/// <summary>What a property has covered: how many fights, and which rules spoke.</summary>
internal sealed class Seen
{
    private readonly HashSet<string> rules = new(StringComparer.Ordinal);
    private int fights;

    public void Add(IReadOnlyList<Finding> findings)
    {
        fights++;
        rules.UnionWith(findings.Select(f => f.Rule));
    }

    public void AssertMany(int fights, int rules)
    {
        Assert.True(this.fights >= fights, $"Only {this.fights} fights were compared.");
        Assert.True(this.rules.Count >= rules, $"Only {this.rules.Count} rules spoke; silent: {string.Join(", ", RuleBook.All.Select(r => r.Id).Except(this.rules, StringComparer.Ordinal))}.");
    }
}
