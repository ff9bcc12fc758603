using Generator.Solver.Completing;
using Generator.Testing;

namespace Generator.Outside.Tests;

/// <summary>
/// Forms that are taught in print, written as notes and completed: what they do is what is done. In fights joined from them more has to give, for lack of room above all. Sources are named in
/// <c>benchmarks/forms.json</c>; all of it with what gave: <c>benchmarks -- forms</c>.
/// </summary>
public sealed class CompletedFormsTests
{
    /// <summary>Moves tried in each at most once there is a first answer.</summary>
    private const long Work = 200_000;

    private static readonly IReadOnlyList<PublishedForms> Stored = PublishedForms.All(Outside.Book);

    [Fact]
    public void No_technique_and_no_attack_of_a_published_form_changes()
    {
        var forms = Stored.Where(f => !f.IsFight).ToList();
        Assert.True(forms.Count > 30, $"{forms.Count} forms");
        Assert.All(forms, f => Assert.True(Complete.Soon(f.Read.Sketch, Outside.Book, Work) is { Verdict.IsClean: true, Keeps: true }, $"{f.Name} ({f.Source})"));
    }

    [Fact]
    public void Most_moves_of_fights_joined_from_forms_stand()
    {
        var fights = Stored.Where(f => f.IsFight).Select(f => Complete.Soon(f.Read.Sketch, Outside.Book, Work)).ToList();
        Assert.Equal(6, fights.Count);
        Assert.All(fights, f => Assert.True(f is { Verdict.IsClean: true }));
        var (said, stands) = (fights.Sum(f => f!.Said), fights.Sum(f => f!.Stands));
        Assert.True(stands >= 0.8 * said, $"{stands} of {said} moves stand.");
    }
}
