using Generator.Domain;
using Generator.Rules.Judging;
using Generator.Rules.Shapes;
using Generator.Rules.Tests.Fights;

namespace Generator.Rules.Tests.Rules;

/// <summary>Six moves: those from the third on are in the second act. Attacks land a count after their move starts.</summary>
public sealed class StoryTests
{
    private static readonly IReadOnlyList<Act> Acts = [new(33, HeroStanding.OnTop), new(67, HeroStanding.InTrouble)];

    private static Found Judge(string moves, params IReadOnlyList<Act> acts) =>
        Verify.Rule("story").Given(Fight.Of("left-lead Bruno@12/250", moves).With(b => b with { Acts = acts.Count > 0 ? acts : Acts, Length = new Domain.Length(null, 6, 6) }));

    [Fact]
    [Fails("story")]
    public void Trouble_comes_too_early() =>
        Judge("jab-left {head-back} ; swing-right > takes-face-hit {presses-on} ; +6 hip-throw-right {thrown-over}").As(Severity.Rough).Costs(4);

    [Fact]
    [Passes("story")]
    public void Trouble_comes_late_costs_two_counts_and_changes_what_the_hero_does() =>
        Judge("jab-left {head-back} ; cross-right {head-back} ; swing-right > takes-face-hit {presses-on} ; +6 hip-throw-right {thrown-over}").FindsNothing();

    /// <summary>The blow lands 2 half counts after the start of the setback, which lasts 2: the next move may start at once, and lacks 4 half counts.</summary>
    [Theory]
    [InlineData("hip-throw-right {thrown-over}", 0, 4)]
    [InlineData("hip-throw-right {thrown-over}", 3, 1)]
    [InlineData("hip-throw-right {thrown-over}", 4, 0)]
    [InlineData("cross-right {head-back}", 4, 1)]
    [InlineData("swing-right > outside-block-left {limb-stopped} ; +4 hip-throw-right {thrown-over}", 0, 0)]
    public void A_setback_is_felt(string next, int gap, int points) =>
        Judge($"jab-left {{head-back}} ; jab-right {{head-back}} ; swing-right > takes-face-hit {{presses-on}} ; +{gap} {next}").Costs(points);

    [Fact]
    public void A_hero_who_never_scores_again_goes_on_as_before() =>
        Judge("jab-left {head-back} ; jab-right {head-back} ; swing-right > takes-face-hit {presses-on} ; +8 swing-right > outside-block-left {limb-stopped}").Costs(1);

    [Theory]
    [InlineData(HeroStanding.Even, null, 0)]
    [InlineData(HeroStanding.InTrouble, null, 0)]
    [InlineData(HeroStanding.OnTop, null, 2)]
    [InlineData(HeroStanding.OnTop, 1, 0)]
    [InlineData(HeroStanding.InTrouble, 3, 4)]
    [InlineData(HeroStanding.InTrouble, 0, 2)]
    public void An_act_says_how_many_it_wants(HeroStanding hero, int? setbacks, int points) =>
        Judge("swing-right > takes-face-hit {presses-on} ; +6 hip-throw-right {thrown-over}", new Act(100, hero, setbacks)).Costs(points);

    /// <summary>A third blow that gets through is felt for three counts: the throw may start six half counts after it lands, and not sooner.</summary>
    [Theory]
    [InlineData(2, 4, 0)]
    [InlineData(3, 4, 2)]
    [InlineData(3, 6, 0)]
    public void Blows_wear_the_hero(int setbacks, int gap, int points) =>
        Judge("jab-left {head-back} ; " + string.Join(" ; +8 ", Enumerable.Repeat("swing-right > takes-face-hit {presses-on}", setbacks)) + $" ; +{gap} hip-throw-right {{thrown-over}}", new Act(100, HeroStanding.InTrouble)).Costs(points);
}
