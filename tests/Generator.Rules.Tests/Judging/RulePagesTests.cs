using System.Text.RegularExpressions;
using Generator.Library;
using Generator.Library.Loading;
using Generator.Rules.Judging;
using Generator.Rules.Tests.Fights;
using Newtonsoft.Json.Linq;

namespace Generator.Rules.Tests.Judging;

/// <summary>Every rule has a page in the same shape, and every page belongs to a rule's id.</summary>
public sealed class RulePagesTests
{
    private static readonly string[] Sections = ["What it says", "Why it matters", "Fails", "Passes", "Settings", "Source"];

    public static TheoryData<string> Pages => new(RulePages.Ids);

    public static TheoryData<string> Rules => new(RuleBook.All.Select(r => r.Id));

    [Fact]
    public void There_are_as_many_as_rules() => Assert.Equal(RuleBook.All.Count, RulePages.Ids.Count);

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
    public void The_page_on_when_people_may_come_tells_of_the_lead_in_and_how_long_it_is()
    {
        var page = RulePages.Read("reset-window").ReplaceLineEndings(" ");

        Assert.Contains("**The lead-in.**", page, StringComparison.Ordinal);
        Assert.Contains($"before count 1, on the clicks of the count-in: at most its {TheBook.Book.Settle.LeadInMost.InWords} (`leadInMost`)", page, StringComparison.Ordinal);
        Assert.Contains("A first blow that would need more is a finding.", page, StringComparison.Ordinal);
        Assert.Contains("`leadInMost`", page[page.IndexOf("## Settings", StringComparison.Ordinal)..], StringComparison.Ordinal);
    }

    /// <summary>A page that gives a figure of <c>settle.json</c> gives the one that is in it.</summary>
    [Fact]
    public void Figures_of_settings_are_what_the_settings_say()
    {
        var settings = JObject.Parse(File.ReadAllText(Path.Combine(LibraryLoader.BundledFolder, "settle.json")));
        var told = RulePages.Ids.SelectMany(id => Regex.Matches(RulePages.Read(id), @"`(?<name>\w+)` \((?<number>[\d.]+)[ )]").Select(m => (Page: id, Setting: m.Groups["name"].Value, Number: m.Groups["number"].Value)))
            .Where(t => settings[t.Setting] is JValue).ToList();

        Assert.All(told, t => Assert.True(string.Equals(settings[t.Setting]!.ToString(), t.Number, StringComparison.Ordinal), $"{t.Page}: {t.Setting} is {settings[t.Setting]}, not {t.Number}"));
        Assert.True(told.Count >= 6, $"only {told.Count} told");
    }

    [Fact]
    public void An_unknown_rule_has_no_page()
    {
        Assert.Null(RulePages.Find("no-such-rule"));
        Assert.Throws<ArgumentException>(() => RulePages.Read("no-such-rule"));
    }
}
