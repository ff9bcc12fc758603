using Generator.Domain;
using Generator.Rules;
using Generator.Solver.Refuting;
using Generator.Rules.Connecting;
using Generator.Rules.Judging;
using Generator.Solver.Constructing;

namespace Generator.Solver.Tests.Constructing;

/// <summary>Hero moments that work only from the floor, from one leg, in a grip or with somebody held: the search leads up to them.</summary>
public sealed class MomentsFromAfarTests
{
    private const int Rounds = 8;

    [Theory]
    [InlineData("gripper-swing")]
    [InlineData("bound-side-kick")]
    [InlineData("bound-back-kick")]
    [InlineData("one-leg-parry")]
    [InlineData("one-leg-sway")]
    [InlineData("hop-back")]
    [InlineData("raised-leg-jam")]
    [InlineData("floor-sole-push")]
    [InlineData("floor-heel-chop")]
    [InlineData("floor-heel-finish")]
    [InlineData("bridge-and-roll")]
    [InlineData("knee-shove-off")]
    [InlineData("shoulder-roll-off")]
    [InlineData("buck-forward")]
    [InlineData("tackled-down")]
    [InlineData("straddled")]
    [InlineData("kicked-while-down")]
    [InlineData("piled-on")]
    [InlineData("lies-winded")]
    public void What_needs_a_lead_in_is_drafted_when_it_is_asked_for(string technique)
    {
        var routine = Found(Asking(new MomentMove(technique, null, null, null)));
        Assert.Contains(routine.Moves, m => m.Technique is { } id && Drafts.Book.Technique(id).BaseId == technique);
    }

    [Fact]
    public void Somebody_sits_down_on_a_floored_hero_when_that_is_asked_for() =>
        Assert.Contains(Found(Asking(new MomentMove("straddled", null, "straddle", null))).Moves, m => m.Attack == "straddle");

    [Theory]
    [InlineData("swing-through-throw", 0, 0)]
    [InlineData("knocked-down", 1, 0)]
    [InlineData("tackled-down", 1, 0)]
    [InlineData("gripper-swing", 1, 0)]
    [InlineData("bridge-and-roll", 0, 0)]
    [InlineData("lies-winded", 0, 1)]
    public void A_draft_has_the_setbacks_and_pauses_that_its_moments_are_or_need(string technique, int setbacks, int pauses)
    {
        var brief = Asking(new MomentMove(technique, null, null, null));
        var complete = DraftBrief.Complete(brief, Drafts.Book);
        Assert.Equal((setbacks, pauses), (complete.Setbacks, complete.Pauses));
    }

    [Fact]
    public void What_the_brief_says_of_setbacks_and_pauses_stays()
    {
        var brief = Asking(new MomentMove("tackled-down", null, null, null)) with { Setbacks = 3, Pauses = 2 };
        var complete = DraftBrief.Complete(brief, Drafts.Book);
        Assert.Equal((3, 2), (complete.Setbacks, complete.Pauses));
    }

    [Theory]
    [InlineData("tackled-down", 0, null)]
    [InlineData("lies-winded", null, 0)]
    public void A_moment_that_the_brief_leaves_no_room_for_is_refused(string technique, int? setbacks, int? pauses)
    {
        var brief = Asking(new MomentMove(technique, null, null, null)) with { Setbacks = setbacks, Pauses = pauses };
        var clash = Refutations.Reasons(new Scene(DraftBrief.Complete(brief, Drafts.Book), Drafts.Book));
        Assert.Contains(technique, Assert.Single(clash), StringComparison.Ordinal);
    }

    /// <summary>Whoever else is held brings the moment no nearer, and only what is done with its own attacker leads there.</summary>
    [Fact]
    public void Letting_a_certain_attacker_go_is_led_up_to_by_holding_that_one()
    {
        var brief = Asking(new MomentMove("lets-go-standing", "Wanda", null, null));
        var scene = new Scene(DraftBrief.Complete(brief, Drafts.Book), Drafts.Book);
        var ground = new Ground(scene);
        var approach = ground.Aims.Moments[0].Approach!;
        var (ready, others, led) = (0, 0, 0);
        foreach (var node in Beginnings(new Scene(DraftBrief.Complete(brief with { Moments = [] }, Drafts.Book), Drafts.Book)))
        {
            var before = approach.MovesBefore(node.State, FormRoutes.MostSetbacks);
            if (node.State.Attackers[1].Posture.IsControlled())
            {
                ready += node.State.Left.Holds(1) && before == 0 ? 1 : 0;
                continue;
            }

            Assert.True(before > 0, $"{before} moves before, although Wanda is not held");
            others += node.State.Attackers[0].Posture.IsControlled() ? 1 : 0;
            var menus = approach.Leads(node.State, FormRoutes.MostSetbacks);
            Assert.Empty(menus[0].Answers.Concat(menus[0].Setbacks).Concat(menus[0].FollowUps.SelectMany(c => c)));
            led += menus[1].Answers.Length + menus[1].FollowUps.Sum(c => c.Length) > 0 ? 1 : 0;
        }

        Assert.True(ready >= 5 && others >= 5 && led >= 100, $"{ready} ready, {others} with somebody else held, {led} led");
    }

    private static IEnumerable<Node> Beginnings(Scene scene)
    {
        var ground = new Ground(scene);
        for (var round = 0; round < 40; round++)
        {
            var dice = new Dice(Dice.SeedOf(1, 0, round));
            var finish = OpeningPlaces.Choose(ground, dice) is { } placements ? new Beam(ground, dice, 6, 3, int.MaxValue).Run(ground.Openings(placements), static _ => { }, CancellationToken.None) : null;
            foreach (var node in finish?.Node.Path() ?? [])
            {
                yield return node;
            }
        }
    }

    private static Routine Found(Brief brief) => Drafts.First(new Scene(DraftBrief.Complete(brief, Drafts.Book), Drafts.Book), Rounds);

    private static Brief Asking(MomentMove move) => new()
    {
        Length = new Length(24, null, 6),
        Tempo = new Tempo(90),
        Floor = new FloorPlan { Width = new Centimetres(1200), Depth = new Centimetres(1200), MarkX = new Centimetres(600), MarkY = new Centimetres(600) },
        Attackers = [new AttackerPart { Name = "Bruno", Skill = Skill.Stunt }, new AttackerPart { Name = "Wanda", Skill = Skill.Stunt }],
        Moments = [new Moment([move], null, null)],
        Safety = Safety.Default with { Runs = 2 },
    };
}
