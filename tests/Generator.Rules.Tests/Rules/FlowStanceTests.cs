using Generator.Domain;
using Generator.Rules.Judging;
using Generator.Rules.Replaying;
using Generator.Rules.Tests.Fights;

namespace Generator.Rules.Tests.Rules;

public sealed class FlowStanceTests
{
    private const string Start = "left-lead Bruno@12/250";

    private static Found Judge(string start, string moves) => Verify.Rule("flow-stance").Given(Fight.Of(start, moves));

    [Fact]
    [Fails("flow-stance")]
    public void From_the_back_to_the_feet_takes_four_counts() =>
        Judge(Start, "swing-right > knocked-down {presses-on} ; +7 cross-right {head-back}").Finds(1, 2).As(Severity.Broken).Measures(3.5m, 4m, "counts");

    [Fact]
    [Passes("flow-stance")]
    public void With_four_counts_the_hero_is_up() =>
        Judge(Start, "swing-right > knocked-down {presses-on} ; +8 cross-right {head-back}").FindsNothing();

    /// <summary>What is done on a knee is done at once; to be on both feet takes a count.</summary>
    [Theory]
    [InlineData("swing-right > bow-under {overswings}", 0)]
    [InlineData("swing-right > duck {overswings}", 1)]
    [InlineData("+2 swing-right > duck {overswings}", 0)]
    public void A_hero_who_opens_on_a_knee_is_down_until_they_get_up(string moves, int findings)
    {
        Judge("kneeling-left Bruno@12/250", moves).Finds(findings, 1);
        Judge(Start, moves.Contains("bow", StringComparison.Ordinal) ? "+2 " + moves : moves).FindsNothing();
    }

    [Theory]
    [InlineData(13, 1)]
    [InlineData(14, 0)]
    public void A_novice_hero_gets_up_more_slowly(int gap, int findings) =>
        Judge("left-lead Bruno@12/250 hero=novice", $"swing-right > knocked-down {{presses-on}} ; +{gap} cross-right {{head-back}}").Finds(findings, 2);

    [Fact]
    public void A_foot_must_come_down_first() =>
        Judge(Start, "round-kick-low-right > shin-check-left {limb-stopped} ; +1 cross-right {head-back}").Finds(1, 2);

    [Fact]
    public void A_kick_from_the_raised_knee_needs_no_change() =>
        Judge(Start, "round-kick-low-right > shin-check-left {limb-stopped} ; raised-push-kick-left {staggers-back}").FindsNothing();

    [Fact]
    public void A_hero_who_is_bound_keeps_the_feet_where_they_are() =>
        Judge("square Bruno@12/150", "headlock-right > headlocked {keeps-grip} ; +20 cross-right {head-back}").Finds(1, 2).Says("cannot start from");

    /// <summary>After the shin check the hero stands on one leg; the cross starts from either lead, and in an equal time.</summary>
    private static Fight Stepping(Stance? said, int gap = 6)
    {
        var fight = Fight.Of(Start, $"round-kick-low-right > shin-check-left {{limb-stopped}} ; +{gap} cross-right {{head-back}}");
        return fight with { Moves = [fight.Moves[0], fight.Moves[1] with { Stance = said }] };
    }

    [Fact]
    public void A_stance_that_a_move_names_is_taken_in_place_of_the_one_soonest_reached()
    {
        var chosen = Stepping(null).Steps()[1].StanceStart;
        var other = Stepping(null).Steps()[1].Technique!.Starts.Members.First(s => s != chosen && s is Stance.LeftLead or Stance.RightLead or Stance.Square);
        Assert.Equal(other, Stepping(other).Steps()[1].StanceStart);
        Verify.Rule("flow-stance").Given(Stepping(other)).FindsNothing();
        Verify.Rule("flow-stance").Given(Stepping(other, 0)).Finds(1, 2).Says("takes longer than the gap");
    }

    [Fact]
    public void A_stance_from_which_the_technique_does_not_start_is_told() =>
        Verify.Rule("flow-stance").Given(Stepping(Stance.FloorBack)).Finds(1, 2).Says("does not start from it");

    [Fact]
    public void What_was_chosen_is_written_into_the_move_and_changes_nothing()
    {
        var fight = Stepping(null);
        var written = StanceNotes.Written(fight.Scene, fight.Routine);
        Assert.Equal([null, fight.Steps()[1].StanceStart], written.Moves.Select(m => m.Stance));
        Assert.Equal(Audit.Of(fight.Scene, fight.Routine).Findings, Audit.Of(fight.Scene, written).Findings);
        Assert.Equal(fight.Routine.Moves, StanceNotes.LeftOut(written).Moves);
    }
}
