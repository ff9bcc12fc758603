using Generator.Domain;
using Generator.Rules.Combining;
using Generator.Rules.Shapes;
using Generator.Rules.Tests.Fights;

namespace Generator.Rules.Tests.Shapes;

/// <summary>Combinations are found in a routine as a coordinator would name them.</summary>
public sealed class CombinationTests
{
    private static string Of(string moves, int tempo = 100)
    {
        var fight = Fight.Of("left-lead Bruno@12/250 Wanda@2/250", moves).With(b => b.AtTempo(new Tempo(tempo)));
        return string.Join(", ", FightShape.Of(fight.Scene, fight.Routine).Combinations.Select(c => $"{c.Attacker} {c.Combination.Id} {c.First}"));
    }

    private const string Jab = "Bruno: jab-left > outside-block-right {comes-again}";
    private const string Cross = "Bruno: cross-right > slip-left {comes-again}";
    private const string Hook = "Bruno: swing-left > outside-block-right {limb-stopped}";

    [Theory]
    [InlineData(Jab + " ; " + Cross, "0 jab-cross 1")]
    [InlineData(Jab + " ; " + Cross + " ; " + Hook, "0 jab-cross-hook 1")]
    [InlineData(Jab + " ; " + Jab + " ; " + Cross, "0 jab-cross 2")]
    [InlineData(Jab + " ; Wanda: +4 jab-left > slip-right {comes-again} ; " + Cross, "")]
    [InlineData(Jab + " ; cross-right {head-back} ; " + Cross, "")]
    [InlineData(Cross + " ; " + Jab, "")]
    [InlineData(Hook + " ; " + Jab + " ; " + Cross, "0 jab-cross 2")]
    [InlineData("Wanda: shove > parry-down-left {comes-again} ; Wanda: swing-right > takes-face-hit {presses-on} ; " + Jab + " ; " + Jab, "1 shove-and-swing 1, 0 double-jab 3")]
    public void What_is_thrown(string moves, string thrown) => Assert.Equal(thrown, Of(moves));

    /// <summary>At 140 a minute a block of 0.45 s takes three half counts, and three are 0.64 s, as long as a count at 100: at 200 three are only 0.45 s, and four are allowed.</summary>
    [Theory]
    [InlineData(100, 0, true)]
    [InlineData(100, 1, false)]
    [InlineData(140, 0, true)]
    [InlineData(140, 1, false)]
    [InlineData(200, 1, true)]
    [InlineData(200, 2, false)]
    public void A_gap_lasts_as_long_at_a_faster_tempo(int tempo, int later, bool thrown)
    {
        var fight = Fight.Of("left-lead Bruno@12/250", Jab + " ; " + Cross).With(b => b.AtTempo(new Tempo(tempo)));
        var length = fight.Scene.Book.Technique("outside-block-right").Length.Value;
        var second = fight.Moves[1] with { Start = new HalfCounts(fight.Moves[0].Start.Value + length + later) };
        var found = ThrownCombination.Of(fight.Scene, (fight with { Moves = [fight.Moves[0], second] }).Steps());
        Assert.Equal(thrown, found.Count == 1);
    }

    /// <summary>In the bundled library every attack of a combination but the last has an answer that leaves the attacker ready within the gap.</summary>
    [Fact]
    public void Every_combination_of_the_library_can_be_thrown()
    {
        var fight = Fight.Of("left-lead Bruno@12/250", Jab).Scene;
        Assert.True(fight.Book.Combinations.Count >= 10);
        foreach (var form in fight.Combinations.All)
        {
            foreach (var attack in form.Attacks.SkipLast(1).Select(k => fight.Book.Attacks[k]))
            {
                Assert.True(
                    fight.Book.Techniques.Any(t => t.Meets(attack) && t.Reactions.Select(r => fight.Book.Reactions[fight.Book.ReactionIndex(r)]).Any(r => r.Posture == Posture.Ready && r.ReadySeconds <= 0.6m)),
                    $"nothing leaves ready whoever begins {fight.Book.Combinations[form.Number].Id} with {attack.Id}");
            }
        }
    }
}
