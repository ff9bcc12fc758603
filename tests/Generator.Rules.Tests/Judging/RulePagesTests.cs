using Generator.Rules.Judging;

namespace Generator.Rules.Tests.Judging;

/// <summary>Every rule has a page in the same shape, and every page belongs to a rule's id.</summary>
public sealed class RulePagesTests
{
    private static readonly string[] Sections = ["What it says", "Why it matters", "Fails", "Passes", "Settings", "Source"];

    public static TheoryData<string> Pages => new(RulePages.Ids);

    public static TheoryData<string> Rules => new(RuleBook.All.Select(r => r.Id));

    [Fact]
    public void There_are_twenty_eight() => Assert.Equal(28, RulePages.Ids.Count);

    [Theory]
    [MemberData(nameof(Rules))]
    public void Every_rule_has_a_page(string id) => Assert.NotNull(RulePages.Find(id));

    [Theory]
    [MemberData(nameof(Pages))]
    public void A_page_is_named_after_its_rule_and_has_every_section(string id)
    {
        var page = RulePages.Read(id);

        Assert.StartsWith($"# {id}\n", page, StringComparison.Ordinal);
        Assert.All(Sections, section => Assert.Contains($"\n## {section}\n", page, StringComparison.Ordinal));
        Assert.InRange(page.Split('\n').Length, 20, 60);
    }

    [Theory]
    [MemberData(nameof(Rules))]
    public void A_page_says_the_same_severity_as_its_rule_and_how_points_are_counted(string id)
    {
        var rule = RuleBook.All[RuleBook.IndexOf(id)];
        var page = RulePages.Read(id);

        Assert.Contains($"**{rule.Worst}", page, StringComparison.OrdinalIgnoreCase);
        Assert.Equal(page.Contains("**Rough", StringComparison.Ordinal), page.Contains("\n## Points\n", StringComparison.Ordinal));
    }

    [Fact]
    public void An_unknown_rule_has_no_page()
    {
        Assert.Null(RulePages.Find("no-such-rule"));
        Assert.Throws<ArgumentException>(() => RulePages.Read("no-such-rule"));
    }
}
