using Generator.Domain;
using Generator.Rules.Shapes;
using Generator.Rules.Tests.Fights;

namespace Generator.Rules.Tests.Rules;

public sealed class MomentumTests
{
    private const string Block = "Bruno: swing-right > outside-block-left {limb-stopped} ; ";

    private static Fight Given(string moves) => Fight.Of("left-lead Bruno@12/250 Wanda@2/250", moves).With(b => b with { Judged = [FightRule.Momentum] });

    private static Found Judge(string moves) => Verify.Rule("momentum").Given(Given(moves));

    [Theory]
    [Fails("momentum")]
    [InlineData(Block + "cross-right {head-back} ; +1 cross-right {head-back}", 3)]
    [InlineData(Block + "cross-right {head-back} ; +1 uppercut-right {head-back}", 3)]
    public void The_same_hand_twice_must_be_drawn_back(string moves, int move) => Judge(moves).Finds(1, move).Costs(1).Measures(100, 25, "%");

    [Theory]
    [Passes("momentum")]
    [InlineData(Block + "cross-right {head-back} ; jab-left {head-back}")]
    [InlineData(Block + "cross-right {head-back} ; Wanda: +4 swing-left > outside-block-right {limb-stopped} ; +1 cross-right {head-back}")]
    [InlineData(Block + "jab-left {rocks-back} ; cross-right {head-back} ; jab-left {head-back} ; cross-right {head-back} ; +1 cross-right {head-back}")]
    public void The_other_hand_another_exchange_or_one_in_four_is_well(string moves) => Judge(moves).FindsNothing();

    /// <summary>Where a move leaves the hero turned to one side and the next turns back for somebody in the other direction, it is wound up, if they are one exchange.</summary>
    [Fact]
    public void A_turn_back_is_counted_as_it_is_made()
    {
        var told = 0;
        for (var seed = 1; seed <= 400; seed++)
        {
            var fight = Symmetry.RandomFight.Of(seed).With(b => b with { Judged = [FightRule.Momentum] });
            var steps = fight.Steps();
            var (pairs, back, wound) = (0, 0, 0);
            foreach (var (one, next) in steps.Zip(steps.Skip(1)))
            {
                if (!next.Opens && one.HasTarget && next.HasTarget)
                {
                    pairs++;
                    var (first, second) = (one.TurnMade + (one.Technique?.Turn.HalfHours ?? 0), next.TurnMade + (next.Technique?.Turn.HalfHours ?? 0));
                    var isBack = (first >= 2 && second <= -2) || (first <= -2 && second >= 2);
                    back += isBack ? 1 : 0;
                    wound += isBack && back * 10 > pairs ? 1 : 0;
                }
            }

            Assert.Equal(wound, FightShape.Of(fight.Scene, fight.Routine).Chain.TooMuch.Count);
            told += wound;
        }

        Assert.True(told >= 10, $"{told} moves wound up");
    }
}
