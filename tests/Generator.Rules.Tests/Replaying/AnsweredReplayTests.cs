using Generator.Domain;
using Generator.Rules.Replaying;
using Generator.Rules.Shapes;
using Generator.Rules.Tests.Fights;
using static Generator.Rules.Tests.Replaying.Case;

namespace Generator.Rules.Tests.Replaying;

/// <summary>A blow of the hero that the attacker blocks, slips or catches: thrown, but no hit, and they stand ready.</summary>
public sealed class AnsweredReplayTests
{
    private static readonly Reaction Parries = CaseBook.Reels with { Id = "parries", Posture = Posture.Ready, OpenSeconds = 0, ReadySeconds = 0.6m, AnswersBlow = true };

    private static readonly Reaction GoesOn = Parries with { Id = "goes-on", ReadySeconds = 0 };

    private static Case Two(Reaction reaction) => new Case().At("12", 90).At("6", 90).Knows(reaction).Knows(CaseBook.Hit with { Id = "strike", BaseId = "strike", Knap = Knap.Victim });

    [Fact]
    public void It_is_thrown_and_does_not_hit()
    {
        var step = Two(Parries).Play(Row(0, 0, "strike", "parries"));
        Assert.Equal((true, true, false), (step.Throws, step.IsAnswered, step.Hits));
        var hit = Two(Parries).Play(Row(0, 0, "strike", "reels"));
        Assert.Equal((true, false, true), (hit.Throws, hit.IsAnswered, hit.Hits));
    }

    /// <summary>The blow ends at 2; 0.6 s are 2 half counts of half a second, none for one who goes on at once.</summary>
    [Theory]
    [InlineData(false, 4)]
    [InlineData(true, 2)]
    public void They_are_back_at_once_or_nearly(bool goesOn, int ready)
    {
        var reaction = goesOn ? GoesOn : Parries;
        var after = Two(reaction).Play(Row(0, 0, "strike", reaction.Id)).After.Attackers[0];
        Assert.Equal((Posture.Ready, ready), (after.Posture, after.ReadyAt));
        Assert.Equal(Posture.Ready, after.PostureAt(2));
        Assert.Equal(goesOn ? Posture.Ready : null, after.PostureAt(3));
    }

    /// <summary>Two blows of the hero, the first answered: one taken, both are contacts, and only the second lands and puts the hero on top (at its end, 4).</summary>
    [Fact]
    public void What_counts_hits_counts_it_as_none()
    {
        var stage = Two(GoesOn);
        var steps = stage.PlayAll(Row(0, 0, "strike", "goes-on"), Row(2, 0, "strike", "reels"));
        Assert.Equal(1, Wear.Of(stage.Scene(), steps)[1].Blows);
        Assert.Equal([(2, false), (4, true)], Contact.Of(steps).Select(c => (c.Time, c.Lands)));
        Assert.Equal([(Upper.Even, 0, 4), (Upper.Hero, 4, 8)], UpperSpan.Of(steps, 8).Select(s => (s.Who, s.From, s.To)));
    }

    /// <summary>Somebody folded, turned away or on the floor answers nothing; who comes with a blow or is only off balance may.</summary>
    [Theory]
    [InlineData(null, true)]
    [InlineData(Posture.Ready, true)]
    [InlineData(Posture.OffBalance, true)]
    [InlineData(Posture.Folded, false)]
    [InlineData(Posture.Turned, false)]
    [InlineData(Posture.OnBack, false)]
    [InlineData(Posture.HeldArm, false)]
    public void Only_who_could_answers(Posture? posture, bool may) => Assert.Equal(may, Parries.CanFollow(posture, seizes: false));

    [Fact]
    public void The_bundled_ones_leave_who_answers_ready()
    {
        var answers = TheBook.Book.Reactions.Where(r => r.AnswersBlow).ToList();
        Assert.True(answers.Count >= 14);
        Assert.All(answers, r => Assert.Equal((Posture.Ready, FallClass.None), (r.Posture, r.Fall)));
        Assert.Contains(answers, r => r.ReadySeconds == 0);
        Assert.All(answers, r => Assert.Contains(TheBook.Book.Techniques, t => t.Reactions.Contains(r.Id) && t.IsHit));
    }
}
