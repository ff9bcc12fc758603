using Generator.Domain;
using Generator.Rules.Bodies;
using Generator.Rules.Judging;
using Generator.Rules.Replaying;
using Generator.Rules.Rules;
using Generator.Rules.Tests.Fights;
using Generator.Rules.Tests.Replaying;
using Generator.Rules.Tests.Symmetry;
using static Generator.Rules.Tests.Replaying.Case;

namespace Generator.Rules.Tests.Rules;

/// <summary>What the rules of the floor say in passing, clause by clause: each is taken out by the fight that is found, and left alone by its neighbour.</summary>
public sealed class FloorClauseTests
{
    private const string Block = "swing-right > outside-block-left {limb-stopped}";

    [Theory]
    [InlineData(49, 1)]
    [InlineData(50, 0)]
    public void Nobody_stands_at_the_heros_elbow_while_the_move_is_on_another(int distance, int findings) =>
        Verify.Rule("spacing").Given(Fight.Of($"left-lead Bruno@12/250 Wanda@6/{distance}", Block)).Tells(findings, 1, "Wanda, Ines");

    /// <summary>
    /// Wanda comes to her place 82 cm from Bruno, who still recovers: enough to pass, too little for two who stand ready when Piet comes. It is told once, and again when Bruno has been at it between.
    /// </summary>
    [Fact]
    public void Two_who_get_ready_beside_one_another_are_told_of_once()
    {
        var moves = string.Join(" ; ", Block, "Piet: +20 " + Block, "+8 " + Block, "Bruno: +8 " + Block, "Piet: +8 " + Block);
        var found = Verify.Rule("spacing").Given(Fight.Of("left-lead Bruno@12/250 Wanda@1/150/12 Piet@6/250", moves));
        Assert.Equal([0, 1, 0, 1, 1], Enumerable.Range(1, 5).Select(m => found.Count(m, "Bruno, Wanda")));
        Verify.Rule("spacing").Given(Fight.Of("left-lead Bruno@12/250 Wanda@2/150/12 Piet@6/250", moves)).FindsNothing();
    }

    /// <summary>Bruno lies across at 6, 70 cm out, where a kick at Wanda, 30 cm too near, has the hero step back: it is told once, and again when the hero has been at him between.</summary>
    [Fact]
    public void A_body_at_the_heros_feet_is_told_of_once()
    {
        var kick = CaseBook.Hit with { Id = "kick", Band = new Band(Limb.Arm, 1.2m, 9m, new Centimetres(0), new Centimetres(40), false) };
        var lies = CaseBook.Reels with { Id = "lies", Posture = Posture.OnBack, Fall = FallClass.Back, Lies = Lying.Across, ReadySeconds = 60 };
        var stays = lies with { Id = "stays", Fall = FallClass.None };
        var steps = new Case().At("6", 70).At("12", 90).Knows(kick).Knows(lies, stays)
            .PlayAll(Row(0, 0, "hit", "lies"), Row(8, 1, "kick", "shakes"), Row(12, 1, "kick", "shakes"), Row(16, 0, "hit", "stays"), Row(20, 1, "kick", "shakes"));
        var (rule, memory, told) = (RuleBook.All[RuleBook.IndexOf("underfoot")], (object?)null, new List<int>());
        foreach (var step in steps)
        {
            var tally = new Tally(true);
            memory = rule.Observe(step.Scene, memory, step, tally);
            told.Add(tally.Findings.Count);
        }

        Assert.Equal([0, 1, 0, 0, 1], told);
    }

    /// <summary>A swing stops at 97 cm.</summary>
    [Theory]
    [InlineData(726, 1)]
    [InlineData(727, 0)]
    public void Nobody_strikes_from_off_the_floor(int depth, int findings) =>
        Verify.Rule("spacing").Given(Fight.Of("left-lead Bruno@12/95", Block).With(b => b with { Floor = b.Floor with { Depth = new(depth) } })).Tells(findings, 1, "Bruno");

    /// <summary>A swing stops at 97 cm, a stagger carries 80 on.</summary>
    [Theory]
    [InlineData(806, 1)]
    [InlineData(807, 0)]
    public void Nobody_staggers_off_the_floor(int depth, int findings) =>
        Verify.Rule("clear-lane").Given(Fight.Of("left-lead Bruno@12/150", Block + " ; step-punch-right {staggers-back}").With(b => b with { Floor = b.Floor with { Depth = new(depth) } })).Finds(findings, 2);

    /// <summary>Bruno crashes into Wanda, who is carried on 60 cm beyond him: past the edge that he keeps clear of.</summary>
    [Theory]
    [InlineData(809, 1)]
    [InlineData(1200, 0)]
    public void Nor_is_who_is_bumped_into_carried_off_the_floor(int depth, int findings) =>
        Verify.Rule("clear-lane").Given(Fight.Of("square Bruno@12/250 Wanda@12:30/180", Block + " ; +1 double-palm {crashes-into}").With(b => b with { Floor = b.Floor with { Depth = new(depth) } })).Tells(findings, 2, "Wanda");

    [Theory]
    [InlineData(570, 1)]
    [InlineData(670, 0)]
    public void Nobody_runs_off_into_what_stands_there(int x, int findings) =>
        Verify.Rule("clear-lane").Given(Fight.Of("left-lead Bruno@12/150", Block + " ; run-off-right {out-flees}")
            .With(b => b with { Floor = b.Floor with { Obstacles = [new Obstacle("bollard", new(x), new(810), new(60), new(60))] } })).Finds(findings, 2);

    /// <summary>Held down across 70 cm before the hero, Bruno is dragged along to 3: his middle is on the floor there, his head 1.32 m out is not.</summary>
    [Theory]
    [InlineData(130, 1)]
    [InlineData(300, 0)]
    public void Nor_is_who_lies_led_with_the_head_off_the_floor(int east, int findings)
    {
        var hold = CaseBook.Hit with { Id = "hold", LeftEnd = HandEnd.Holding };
        var drag = CaseBook.Hit with { Id = "drag", CarriesHeld = true };
        var down = CaseBook.Caught with { Id = "down", Posture = Posture.Pinned, Fall = FallClass.Forward, Lies = Lying.Across };
        var floor = new FloorPlan { Width = new(600 + east), Depth = new(1200), MarkX = new(600), MarkY = new(600) };
        var step = new Case().On(floor).At("12", 70).At("3", 60).Knows(hold, drag).Knows(down).Play(Row(0, 0, "hold", "down"), Row(4, 1, "drag", "reels", "blow"));
        Assert.Equal(findings, Told("clear-lane", step).Count(f => f.Message.Contains("leads Bruno", StringComparison.Ordinal)));
    }

    /// <summary>A blow lands at 90 cm and knocks its attacker into Wanda on the same bearing: the metre counts from her too, however near she is.</summary>
    [Theory]
    [InlineData(140, 1)]
    [InlineData(190, 0)]
    public void The_metre_from_who_stands_ready_counts_for_who_is_bumped_into(int distance, int findings)
    {
        var crash = CaseBook.Reels with { Id = "crash", HitsSecond = true };
        var step = new Case().At("12", 300).At("12", distance).Knows(crash).Play(Row(8, 0, "hit", "crash", "blow"));
        Assert.Equal(1, step.Second);
        Assert.Equal(findings, Told("spacing", step).Count);
    }

    /// <summary>Bruno is knocked into Wanda and falls on along his bearing, under her feet: two of one move do not end on one another.</summary>
    [Fact]
    public void Two_of_one_move_do_not_end_on_one_another()
    {
        Reaction Crash(Lying lies) => CaseBook.Reels with { Id = "crash", HitsSecond = true, Posture = Posture.OnBack, Fall = FallClass.Back, Lies = lies };
        Step Crashed(Lying lies) => new Case().At("12", 300).At("12", 140).Knows(Crash(lies)).Play(Row(8, 0, "hit", "crash", "blow"));
        var meeting = Assert.Single(Crashed(Lying.FeetNear).Meetings(Crashed(Lying.FeetNear).Scene));
        Assert.True(meeting is { IsUnderfoot: true, Apart: 0, Room: 50 });
        Assert.Empty(Crashed(Lying.Across).Meetings(Crashed(Lying.Across).Scene));
    }

    /// <summary>Both come through the one door to be in at the same count.</summary>
    [Theory]
    [InlineData(20, 1)]
    [InlineData(40, 0)]
    public void Two_who_come_onto_the_floor_keep_room_from_each_other(int entrance, int findings)
    {
        var fight = Fight.Of($"left-lead Ada@9/250 Bruno@2/300/20 Wanda@4/300/{entrance}", "Ada: +50 " + Block);
        Verify.Rule("spacing").Given(fight.With(b => b with { Floor = b.Floor with { WaysIn = [new WayIn("the door", new(1200), new(600))] } })).Tells(findings, 1, "Bruno, Wanda");
    }

    /// <summary>Who is led half round the clock goes round the hero, not through.</summary>
    [Fact]
    public void Who_is_led_goes_round_the_hero()
    {
        var legs = Motion.Led(Fight.Of("square Bruno@12/250", Block).Scene, 1, 0, 6, (0, 70), (10, 70), false).Legs().Where(l => l.Kind == LegKind.Led).ToList();
        Assert.Equal(10, legs.Count);
        Assert.All(legs, l => Assert.InRange(default(Place).ToLine(l.Start, l.End), 69, 71));
    }

    /// <summary>Who comes too near to whom, looked for quickly and among all legs of everybody that a step has anything to do with.</summary>
    [Fact]
    public void What_is_looked_for_quickly_is_all_there_is()
    {
        var (met, entering, led) = (0, 0, 0);
        for (var seed = 1; seed <= 400; seed++)
        {
            foreach (var step in RandomFight.Of(seed).Steps())
            {
                var found = step.Meetings(step.Scene).Select(Key).ToHashSet();
                var all = All(step).ToHashSet();
                Assert.True(all.SetEquals(found), $"seed {seed}, move {step.Index + 1}: {string.Join(' ', all)} instead of {string.Join(' ', found)}");
                met += found.Count;
                entering += step.Meetings(step.Scene).Count(m => m.Mine.Kind == LegKind.Enters || m.Other.Kind == LegKind.Enters);
                led += step.Meetings(step.Scene).Count(m => m.Mine.Kind == LegKind.Led || m.Other.Kind == LegKind.Led);
            }
        }

        Assert.True(met > 300 && entering > 5 && led > 5, $"{met} met, {entering} on the way onto the floor, {led} led");
    }

    private static IEnumerable<(int, int, int)> All(Step step)
    {
        var (attackers, settle) = (step.After.Attackers, step.Scene.Settle);
        var since = step.Before.Moves == 0 ? double.NegativeInfinity : step.Before.Time;
        for (var a = 0; a < attackers.Count; a++)
        {
            for (var b = a + 1; b < attackers.Count; b++)
            {
                var both = attackers[a].Way.Move == step.Index && attackers[b].Way.Move == step.Index && step.Concerns(a) && step.Concerns(b);
                foreach (var (one, two) in attackers[a].Way.Chain().SelectMany(l => attackers[b].Way.Chain().Select(m => (l, m))))
                {
                    var enters = one.Kind == LegKind.Enters || two.Kind == LegKind.Enters;
                    var acts = one.Move == step.Index || two.Move == step.Index;
                    var wanted = both && !enters ? 50 : one.Lies || two.Lies ? 50 : one.Kind == LegKind.Sent || two.Kind == LegKind.Sent ? 80 : 60;
                    if ((!acts && !enters) || (both && !enters && !(one.IsTheEnd && two.IsTheEnd)))
                    {
                        continue;
                    }

                    var apart = enters ? one.Apart(two, acts ? double.NegativeInfinity : since, step.After.Time) : one.Apart(two);
                    if (FloorGeometry.Whole(apart) < wanted)
                    {
                        yield return Key(new Meeting(a, b, one, two, 0, wanted));
                    }
                }
            }
        }
    }

    private static (int, int, int) Key(Meeting meeting) =>
        (Math.Min(meeting.First, meeting.Second), Math.Max(meeting.First, meeting.Second), meeting.IsUnderfoot ? 2 : meeting.IsInALane ? 1 : 0);

    private static IReadOnlyList<Finding> Told(string rule, Step step)
    {
        var tally = new Tally(true);
        RuleBook.All[RuleBook.IndexOf(rule)].Observe(step.Scene, null, step, tally);
        return tally.Findings;
    }
}
