using Generator.Rules.Judging;
using Generator.Rules.Rules;
using Generator.Solver.Filling;
using Generator.Solver.Rules;

namespace Generator.Solver.Tests.Judging;

/// <summary>Every rule of the audit has a module of the same name on the solver's side, and the other way round.</summary>
public sealed class RuleTwinsTests
{
    private static IEnumerable<string> NamesOf<T>() => typeof(T).Assembly.GetTypes().Where(t => t is { IsAbstract: false } && t.IsSubclassOf(typeof(T))).Select(t => t.Name).Order(StringComparer.Ordinal);

    [Fact]
    public void Both_sides_have_the_same_rules()
    {
        Assert.All(NamesOf<Rule>().Except(NamesOf<RuleModule>()), n => Assert.Fail($"src/Generator.Solver/Rules has no rule {n}, but src/Generator.Rules/Rules has."));
        Assert.All(NamesOf<RuleModule>().Except(NamesOf<Rule>()), n => Assert.Fail($"src/Generator.Rules/Rules has no rule {n}, but src/Generator.Solver/Rules has."));
    }

    [Fact]
    public void Both_sides_list_all_of_them_in_the_same_order()
    {
        Assert.Equal(RuleBook.All.Select(r => r.GetType().Name), RuleModules.All.Select(m => m.GetType().Name));
        Assert.Equal(RuleBook.All.Select(r => r.Id), RuleModules.All.Select(m => m.Id));
    }
}
