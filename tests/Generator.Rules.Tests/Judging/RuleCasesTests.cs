using System.Reflection;
using Generator.Rules.Judging;
using Generator.Rules.Rules;
using Generator.Rules.Tests.Fights;

namespace Generator.Rules.Tests.Judging;

/// <summary>Every rule has a class of its own named after its id, a page, and tests that show it passing and failing.</summary>
public sealed class RuleCasesTests
{
    public static TheoryData<string> Ids => new(RuleBook.All.Select(r => r.Id));

    private static IEnumerable<MethodInfo> Tests => typeof(RuleCasesTests).Assembly.GetTypes()
        .SelectMany(t => t.GetMethods(BindingFlags.Public | BindingFlags.Instance))
        .Where(m => m.GetCustomAttributes<FactAttribute>().Any());

    [Fact]
    public void The_book_has_every_rule_there_is_once()
    {
        var classes = typeof(Rule).Assembly.GetTypes().Where(t => t is { IsAbstract: false } && t.IsSubclassOf(typeof(Rule)));
        Assert.All(classes, c => Assert.True(RuleBook.All.Count(r => r.GetType() == c) == 1, $"{c.Name} does not stand once in RuleBook.All."));
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void Its_class_is_named_after_its_id(string id) =>
        Assert.Equal(string.Concat(id.Split('-').Select(w => char.ToUpperInvariant(w[0]) + w[1..])), RuleBook.All[RuleBook.IndexOf(id)].GetType().Name);

    [Theory]
    [MemberData(nameof(Ids))]
    public void It_has_a_page(string id) => Assert.True(RulePages.Find(id) is not null, $"There is no page src/Generator.Rules/Pages/{id}.md.");

    [Theory]
    [MemberData(nameof(Ids))]
    public void A_test_shows_it_passing(string id) =>
        Assert.True(Tests.Any(m => m.GetCustomAttributes<PassesAttribute>().Any(a => a.Rule == id)), $"No test in tests/Generator.Rules.Tests/Rules bears [Passes(\"{id}\")].");

    [Theory]
    [MemberData(nameof(Ids))]
    public void A_test_shows_it_failing(string id) =>
        Assert.True(Tests.Any(m => m.GetCustomAttributes<FailsAttribute>().Any(a => a.Rule == id)), $"No test in tests/Generator.Rules.Tests/Rules bears [Fails(\"{id}\")].");

    [Fact]
    public void No_test_shows_a_rule_that_is_not_there() =>
        Assert.All(
            Tests.SelectMany(m => m.GetCustomAttributes<PassesAttribute>().Select(a => a.Rule).Concat(m.GetCustomAttributes<FailsAttribute>().Select(a => a.Rule))),
            id => Assert.True(RuleBook.Knows(id), id));
}
