using Generator.Domain;
using Generator.Rules.Bodies;
using Generator.Rules.Replaying;
using Generator.Rules.Tests.Fights;

namespace Generator.Rules.Tests.Rules;

/// <summary>The mark lies in the middle of 12 by 12 m, at 600, 600. Bruno stands at 12; his right is at 9 o'clock as the hero sees it, and a clock hour is two half hours.</summary>
public sealed class PropTests
{
    private const string Down = "+8 prop-downward-right > prop-roof-right {limb-stopped}";

    private static readonly PropPart Ines = new("stick", "stick") { With = -1 };

    private static readonly PropPart Bruno = new("club", "stick") { With = 0 };

    private static Fight Of(string moves, params PropPart[] props) => Fight.Of("left-lead Bruno@12/250", moves).With(b => b with { Props = props });

    private static PropState After(Fight fight, int prop) => fight.Steps()[^1].After.Props[prop];

    [Fact]
    [Passes("prop")]
    public void Stick_against_stick() => Verify.Rule("prop").Given(Of(Down, Ines, Bruno)).FindsNothing();

    [Fact]
    [Fails("prop")]
    public void Nothing_to_cover_with() => Verify.Rule("prop").Given(Of(Down, Bruno)).Finds(1, 1).As(Severity.Broken).Says("something to cover with");

    [Fact]
    public void The_hand_is_the_hand_of_the_record() =>
        Verify.Rule("prop").Given(Of(Down, Ines with { Hand = PropHand.Left }, Bruno)).Finds(1, 1).Says("in the right hand of");

    /// <summary>A hand that holds something strikes no blow and blocks nothing bare; a kick and the other hand are free.</summary>
    [Theory]
    [InlineData("+8 swing-right > outside-block-left {limb-stopped}", 0)]
    [InlineData("+8 swing-left > outside-block-right {limb-stopped}", 1)]
    [InlineData("+8 jab-left > duck {overswings}", 0)]
    public void A_hand_that_holds_something_is_not_free(string moves, int findings) =>
        Verify.Rule("prop").Given(Of(moves, Ines)).Finds(findings, 1);

    [Theory]
    [InlineData("+8 swing-right > duck {overswings}", 1)]
    [InlineData("+8 swing-left > duck {overswings}", 0)]
    public void Nor_is_an_attackers(string moves, int findings) => Verify.Rule("prop").Given(Of(moves, Bruno)).Finds(findings, 1);

    /// <summary>Without any prop of the brief that would serve it is for able to say.</summary>
    [Fact]
    public void A_brief_without_one_leaves_it_to_able()
    {
        var fight = Of(Down, Bruno with { Kind = "rubber-knife", Hand = PropHand.Left });
        Assert.Contains("something to swing", fight.Scene.Able.WhyNotAttack(TheBook.Book.AttackIndex("prop-downward-right"), 0), StringComparison.Ordinal);
        Assert.Contains("something to cover with", fight.Scene.Able.WhyNotTechnique(TheBook.Book.TechniqueIndex("prop-roof-right")), StringComparison.Ordinal);
        Assert.Contains(fight.Audit().Findings, f => f is { Rule: "able", Severity: Severity.Unsafe });
        Verify.Rule("prop").Given(fight).FindsNothing();
    }

    /// <summary>Of Bruno's 176 cm the arm is 68.64: 1.4 of it, rounded up, and 55 of the stick are 152.</summary>
    [Fact]
    public void Reach_grows_by_its_length()
    {
        Assert.Equal(97 + 55, Of(Down, Ines, Bruno).Steps()[0].Distance);
        Assert.Equal(97 + 30, Of(Down, Ines with { Kind = "short-stick" }, Bruno with { Kind = "short-stick" }).Steps()[0].Distance);
    }

    /// <summary>With a short one and a long one about, near is near for the long one.</summary>
    [Fact]
    public void Two_lengths_keep_the_distance_of_the_longer() =>
        Assert.Equal(97 + 55, Of(Down, Ines with { Kind = "short-stick" }, Bruno).Steps()[0].Distance);

    [Fact]
    public void A_bare_block_is_no_answer_to_a_stick() =>
        Verify.Rule("answers-attack").Given(Of("+8 prop-downward-right > rising-block-left {limb-stopped}", Bruno)).Finds(1, 1);

    /// <summary>He is caught by the wrist and locked: the club is in the hero's right hand, and what needs it there finds it.</summary>
    [Fact]
    public void A_disarm_takes_it()
    {
        const string Taken = "+8 prop-flank-swing-right > prop-catch-wrist-left {arm-caught} ; +1 prop-lock-and-take-left {to-one-knee}";
        var fight = Of(Taken, Bruno);
        Verify.Rule("prop").Given(fight).FindsNothing();
        Assert.Equal((-1, PropHand.Right), (After(fight, 0).Holder, After(fight, 0).Hand));
        Verify.Rule("prop").Given(Of(Taken + " ; +1 prop-finish-right {out-sinks}", Bruno)).FindsNothing();
    }

    /// <summary>The hero's right hand holds a stick of its own, so that it cannot take another: the hand works, and two would be in it.</summary>
    [Fact]
    public void A_full_hand_takes_nothing() =>
        Verify.Rule("prop").Given(Of("+8 prop-flank-swing-right > prop-catch-wrist-left {arm-caught} ; +1 prop-lock-and-take-left {to-one-knee}", Bruno, Ines)).Finds(2, 2);

    /// <summary>Shaken out of the right hand: Bruno looks at the hero from 12, so that it lies 90 cm off him towards 9, in the hero's eyes to the left.</summary>
    [Fact]
    public void What_is_dropped_lies_beside_the_hand_that_held_it()
    {
        var fight = Of("+8 prop-flank-swing-right > prop-catch-wrist-left {arm-caught} ; +1 prop-lock-and-shake-left {rises-on-toes}", Bruno);
        var (step, prop) = (fight.Steps()[^1], After(fight, 0));
        Assert.True(prop.Lies);
        Assert.Equal(new Place(step.After.Attackers[0].Place.X - 90, step.After.Attackers[0].Place.Y).Rounded(), prop.Place);
    }

    /// <summary>Another stands there: it lies thirty degrees farther round, or farther out, clear of both.</summary>
    [Fact]
    public void It_lies_clear_of_everybodys_feet()
    {
        var fight = Fight.Of("left-lead Bruno@12/250 Wanda@10/120", "Bruno: +8 prop-flank-swing-right > prop-catch-wrist-left {arm-caught} ; Bruno: +1 prop-lock-and-shake-left {rises-on-toes}").With(b => b with { Props = [Bruno] });
        var after = fight.Steps()[^1].After;
        Assert.True(after.Props[0].Lies);
        Assert.All(after.Attackers, a => Assert.True(a.Place.To(after.Props[0].Place) >= 60, $"{a.Place} {after.Props[0].Place}"));
        Assert.True(after.Props[0].Place.To(Place.Mark) >= 60);
    }

    /// <summary>A fall lets go; going to a knee does not.</summary>
    [Theory]
    [InlineData("back-fall", true)]
    [InlineData("to-one-knee", false)]
    public void Whoever_falls_drops_it(string reaction, bool drops)
    {
        var fight = Of($"+8 swing-left > duck {{overswings}} ; +1 cross-right {{{reaction}}}", Bruno);
        Assert.Equal(drops, After(fight, 0).Lies);
    }

    [Fact]
    public void A_break_away_serves_once()
    {
        var bottle = new PropPart("bottle", "sugar-bottle") { With = 0 };
        const string Hit = "prop-bottle-swing-right > prop-takes-bottle-left {presses-on}";
        Assert.True(After(Of("+8 " + Hit, bottle), 0).Broken);
        Verify.Rule("prop").Given(Of("+8 " + Hit + " ; +8 " + Hit, bottle)).Finds(2, 2).As(Severity.Broken);
    }

    [Fact]
    public void A_thrown_cloth_lies_behind_the_hero()
    {
        var fight = Of("+8 prop-cloth-over-right > prop-back-off {falls-short}", new PropPart("coat", "coat") { With = 0 });
        var cloth = After(fight, 0);
        Assert.True(cloth.Lies);
        Assert.True(cloth.Place.Y < 0, cloth.Place.ToString());
    }

    /// <summary>It breaks on the hero, who must not go to a knee on the mark in the next move; Bruno, whom a push kick sends a metre and more away, may fall there, and beside the hero may not.</summary>
    [Theory]
    [InlineData(" ; +8 swing-left > drop-to-knee-right {overswings}", 1)]
    [InlineData(" ; +8 swing-left > duck {overswings}", 0)]
    [InlineData(" ; +8 swing-left > duck {overswings} ; +1 cross-right {to-one-knee}", 1)]
    [InlineData(" ; +8 swing-left > duck {overswings} ; +1 push-kick-right {knocked-flat}", 0)]
    public void Nobody_goes_down_where_it_broke(string then, int findings)
    {
        var fight = Of("+8 prop-bottle-swing-right > prop-takes-bottle-left {presses-on}" + then, new PropPart("bottle", "sugar-bottle") { With = 0 });
        Verify.Rule("prop").Given(fight).Finds(findings, fight.Steps().Count);
        Assert.Equal(Place.Mark, After(fight, 0).Place);
    }

    /// <summary>A stick 90 cm off is taken up, one 120 cm off is not.</summary>
    [Theory]
    [InlineData(90, 0)]
    [InlineData(120, 1)]
    public void It_is_taken_up_within_reach(int away, int findings)
    {
        var fight = Of("+8 prop-pick-up-right", new PropPart("stick", "stick") { X = new(600 + away), Y = new(600) });
        Verify.Rule("prop").Given(fight).Finds(findings, 1);
        Assert.Equal(findings == 0, After(fight, 0).Holder == -1);
    }

    [Fact]
    public void Passed_on_it_is_in_the_other_hand() => Assert.Equal(PropHand.Left, After(Of("+8 prop-change-hands-right", Ines), 0).Hand);

    /// <summary>He stops at the nearest end of the band of a jab, 97 cm, where a stick lies.</summary>
    [Theory]
    [InlineData(97, 1)]
    [InlineData(250, 0)]
    public void Nobody_is_left_on_what_lies_about(int at, int findings)
    {
        var fight = Fight.Of("left-lead Bruno@12/350", "+8 jab-right > duck {overswings}").With(b => b with { Props = [new PropPart("stick", "stick") { X = new(600), Y = new(600 + at) }] });
        Verify.Rule("prop").Given(fight).Finds(findings, 1);
    }

    [Fact]
    public void Nobody_opens_on_one() =>
        Assert.Contains(Fight.Of("left-lead Bruno@12/350", "+8 jab-right > duck {overswings}").With(b => b with { Props = [new PropPart("stick", "stick") { X = new(600), Y = new(960) }] }).Audit().Findings, f => f is { Rule: "prop", Severity: Severity.Unsafe });

    /// <summary>Mirrored, everything lies where a mirror shows it.</summary>
    [Fact]
    public void A_mirrored_fight_leaves_it_on_the_mirrored_side()
    {
        var fight = Of("+8 prop-flank-swing-right > prop-catch-wrist-left {arm-caught} ; +1 prop-lock-and-shake-left {rises-on-toes}", Bruno);
        var mirrored = FightMirror.Of(fight).With(b => b with { Props = [Bruno with { Hand = PropHand.Left }] });
        Verify.Rule("prop").Given(mirrored).FindsNothing();
        var (one, other) = (After(fight, 0).Place, After(mirrored, 0).Place);
        Assert.Equal((-one.X, one.Y), (other.X, other.Y));
    }

    /// <summary>A prop that nobody uses takes nothing from a fight but the hand that holds it.</summary>
    [Fact]
    public void An_unused_prop_changes_nothing_else()
    {
        const string Moves = "+8 swing-right > outside-block-left {limb-stopped} ; +1 front-kick-right {folds} ; +8 jab-left > duck {overswings}";
        var (bare, armed) = (Of(Moves), Of(Moves, Ines, new PropPart("far", "broom") { X = new(100), Y = new(100) }));
        Assert.Equal(bare.Audit().Findings.Select(f => (f.Rule, f.Move, f.Message)), armed.Audit().Findings.Select(f => (f.Rule, f.Move, f.Message)));
        Assert.Equal(bare.Steps().Select(s => s.After.Attackers[0]), armed.Steps().Select(s => s.After.Attackers[0]), (one, other) => (one.Bearing, one.Distance, one.Posture, one.ReadyAt) == (other.Bearing, other.Distance, other.Posture, other.ReadyAt));
    }
}
