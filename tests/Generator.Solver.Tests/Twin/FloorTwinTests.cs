using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Judging;
using Generator.Solver.Engine;
using Generator.Solver.Tests.Constructing;
using Generator.Testing;
using Xunit.Abstractions;

namespace Generator.Solver.Tests.Twin;

/// <summary>
/// Planted fights, one for each way in which bodies meet on the floor or leave it: each rule of the floor by which the audit finds it, the model forbids it by alone, and without those rules it allows
/// it. The same with more room both pass.
/// </summary>
public sealed class FloorTwinTests(ITestOutputHelper output)
{
    private static readonly string[] Floor = ["spacing", "clear-lane", "underfoot", "reset-window"];
    private static readonly FloorPlan Wide = new() { Width = new(1200), Depth = new(1200), MarkX = new(600), MarkY = new(600) };

    /// <summary>Name@clock/centimetres/entrance; start name@from attack technique reaction.</summary>
    [Theory]
    [InlineData("spacing", "stands ready where another strikes", "Bruno@12/250 Wanda@1/150", "8 Bruno swing-right outside-block-left limb-stopped")]
    [InlineData("", "stands ready a step aside", "Bruno@12/250 Wanda@2/150", "8 Bruno swing-right outside-block-left limb-stopped")]
    [InlineData("spacing", "comes in beside who still recovers", "Bruno@12/250 Wanda@1/250", "8 Bruno swing-right outside-block-left limb-stopped ; 10 Wanda swing-left outside-block-right limb-stopped")]
    [InlineData("", "comes in a step aside of who still recovers", "Bruno@12/250 Wanda@2/250", "8 Bruno swing-right outside-block-left limb-stopped ; 10 Wanda swing-left outside-block-right limb-stopped")]
    [InlineData("spacing", "comes in beside who is held", "Bruno@12/250 Wanda@1/250", "8 Bruno cross-right wrist-catch-left arm-caught ; 11 Wanda swing-left outside-block-right limb-stopped")]
    [InlineData("spacing", "comes in beside who kneels", "Bruno@12/250 Wanda@12:30/400", "8 Bruno jab-right step-back falls-short ; 10 Bruno - low-side-kick-right to-one-knee ; 13 Wanda swing-left outside-block-right limb-stopped")]
    [InlineData("spacing", "walks round through who waits for a call", "Bruno@2/250 Wanda@10/250 Piet@11/250", "12 Wanda@12 swing-right outside-block-left limb-stopped")]
    [InlineData("", "walks round where nobody waits", "Bruno@2/250 Wanda@10/250 Piet@9/250", "12 Wanda@12 swing-right outside-block-left limb-stopped")]
    [InlineData("spacing", "comes onto the floor through who waits", "Bruno@12/250 Wanda@3/200/16 Piet@3/340", "10 Bruno swing-right outside-block-left limb-stopped ; 16 Bruno swing-right outside-block-left limb-stopped")]
    [InlineData("", "comes onto the floor where nobody waits", "Bruno@12/250 Wanda@4/250/16 Piet@2/340", "10 Bruno swing-right outside-block-left limb-stopped ; 16 Bruno swing-right outside-block-left limb-stopped")]
    [InlineData("spacing,clear-lane,underfoot", "thrown onto another", "Bruno@12/250 Wanda@6/120", "8 Bruno cross-right wrist-catch-left arm-caught ; 11 Bruno - hip-throw-right thrown-over")]
    [InlineData("", "thrown past another", "Bruno@12/250 Wanda@3/250", "8 Bruno cross-right wrist-catch-left arm-caught ; 11 Bruno - hip-throw-right thrown-over")]
    [InlineData("spacing,clear-lane", "staggers past another", "Bruno@12/200 Wanda@1/150", "8 Bruno swing-right outside-block-left limb-stopped ; 10 Bruno - step-punch-right staggers-back")]
    [InlineData("", "staggers past at a distance", "Bruno@12/200 Wanda@2/150", "8 Bruno swing-right outside-block-left limb-stopped ; 10 Bruno - step-punch-right staggers-back")]
    [InlineData("clear-lane,spacing", "turned into another", "Bruno@12/250 Wanda@1/140", "8 Bruno swing-right parry-down-left limb-swept-in")]
    [InlineData("spacing,clear-lane", "falls to the knee beside another", "Bruno@12/250 Wanda@1/110", "8 Bruno jab-right step-back falls-short ; 10 Bruno - low-side-kick-right to-one-knee")]
    [InlineData("spacing,clear-lane,underfoot", "walks in over a body", "Bruno@12/150 Wanda@12:30/350", "8 Bruno swing-right outside-block-left limb-stopped ; 10 Bruno - step-punch-right back-fall ; 14 Wanda swing-right outside-block-left limb-stopped")]
    [InlineData("", "walks in past the feet", "Bruno@12/150 Wanda@1/300", "8 Bruno swing-right outside-block-left limb-stopped ; 10 Bruno - step-punch-right back-fall ; 16 Wanda swing-right outside-block-left limb-stopped")]
    [InlineData("underfoot", "falls at somebody's feet", "Bruno@12/150 Wanda@12/300", "8 Bruno swing-right outside-block-left limb-stopped ; 10 Bruno - step-punch-right back-fall")]
    [InlineData("underfoot", "lies where the hero steps back", "Bruno@12/250 Wanda@12/400", "8 Bruno cross-right wrist-catch-left arm-caught ; 11 Bruno - hip-throw-right thrown-over ; 22 Wanda swing-right outside-block-left limb-stopped ; 24 Wanda - high-round-kick-right head-turns")]
    [InlineData("", "lies where the hero does not step", "Bruno@12/250 Wanda@12/400", "8 Bruno cross-right wrist-catch-left arm-caught ; 11 Bruno - hip-throw-right thrown-over ; 22 Wanda swing-right outside-block-left limb-stopped ; 24 Wanda - cross-right head-back")]
    [InlineData("spacing,clear-lane,underfoot", "is thrown onto a body", "Bruno@12/250 Wanda@12/400", "8 Bruno cross-right wrist-catch-left arm-caught ; 11 Bruno - hip-throw-right thrown-over ; 22 Wanda cross-right wrist-catch-left arm-caught ; 25 Wanda - hip-throw-right thrown-over")]
    [InlineData("spacing,underfoot", "comes onto the floor at a body", "Bruno@12/250 Wanda@12/300/20", "8 Bruno swing-right outside-block-left limb-stopped ; 10 Bruno - step-punch-right back-fall ; 14 Bruno - stomp-finish-left out-lying")]
    [InlineData("reset-window", "comes again before they have come to where they were sent", "Bruno@12/250", "8 Bruno swing-right side-step-left stumbles-past ; 10 Bruno - jab-right parries-and-goes-on ; 13 Bruno swing-left outside-block-right limb-stopped")]
    [InlineData("", "comes again once they have", "Bruno@12/250", "8 Bruno swing-right side-step-left stumbles-past ; 10 Bruno - jab-right parries-and-goes-on ; 17 Bruno swing-left outside-block-right limb-stopped")]
    [InlineData("spacing", "opens a centimetre too near", "Bruno@12/250 Wanda@12/349", "8 Bruno swing-right outside-block-left limb-stopped")]
    [InlineData("", "opens a metre off", "Bruno@12/250 Wanda@12/350", "8 Bruno swing-right outside-block-left limb-stopped")]
    [InlineData("spacing", "stands ready a centimetre too near to where another strikes", "Bruno@12/250 Wanda@1/170", "8 Bruno swing-right outside-block-left limb-stopped")]
    [InlineData("spacing", "gets ready beside another", "Bruno@12/250 Wanda@1/150/20 Piet@6/250", "8 Bruno swing-right outside-block-left limb-stopped ; 34 Piet swing-right outside-block-left limb-stopped")]
    [InlineData("", "gets ready a step aside", "Bruno@12/250 Wanda@2/150/20 Piet@6/250", "8 Bruno swing-right outside-block-left limb-stopped ; 34 Piet swing-right outside-block-left limb-stopped")]
    [InlineData("spacing", "stands at the hero's elbow", "Bruno@12/250 Wanda@6/49", "8 Bruno swing-right outside-block-left limb-stopped")]
    [InlineData("", "stands beyond the hero's elbow", "Bruno@12/250 Wanda@6/50", "8 Bruno swing-right outside-block-left limb-stopped")]
    public void Bodies_meet(string rules, string how, string cast, string moves) => Judged(rules, how, Planted(Wide, cast, moves));

    /// <summary>What the floor ends at or holds: width, depth, the mark's place, and perhaps what stands there or a door.</summary>
    [Theory]
    [InlineData("spacing", "opens off the floor", "1200 800 600 400", "Bruno@12/371", "12 Bruno swing-right outside-block-left limb-stopped")]
    [InlineData("", "opens on the floor", "1200 800 600 400", "Bruno@12/370", "12 Bruno swing-right outside-block-left limb-stopped")]
    [InlineData("spacing,clear-lane", "strikes from off the floor", "1200 725 600 600", "Bruno@12/95", "8 Bruno swing-right outside-block-left limb-stopped")]
    [InlineData("spacing", "walks round off the floor", "700 1200 350 600", "Bruno@12/350", "40 Bruno@3 swing-right outside-block-left limb-stopped")]
    [InlineData("", "walks round on the floor", "800 1200 400 600", "Bruno@12/350", "40 Bruno@3 swing-right outside-block-left limb-stopped")]
    [InlineData("spacing", "walks round through what stands there", "1200 1200 600 600 770 770 20 20", "Bruno@12/250", "40 Bruno@3 swing-right outside-block-left limb-stopped")]
    [InlineData("clear-lane", "is led through what stands there", "1200 1200 600 600 640 640 20 20", "Bruno@12/250 Wanda@3/250", "8 Bruno cross-right wrist-catch-left arm-caught ; 12 Wanda cross-right shield-turn-left limb-stopped")]
    [InlineData("clear-lane", "staggers off the floor", "1200 780 600 600", "Bruno@12/140", "8 Bruno swing-right outside-block-left limb-stopped ; 10 Bruno - step-punch-right staggers-back")]
    [InlineData("", "staggers to the edge", "1200 820 600 600", "Bruno@12/140", "8 Bruno swing-right outside-block-left limb-stopped ; 10 Bruno - step-punch-right staggers-back")]
    [InlineData("clear-lane", "falls with the head off the floor", "1200 880 600 600", "Bruno@12/140", "8 Bruno swing-right outside-block-left limb-stopped ; 10 Bruno - step-punch-right back-fall")]
    [InlineData("", "falls with the head at the edge", "1200 900 600 600", "Bruno@12/140", "8 Bruno swing-right outside-block-left limb-stopped ; 10 Bruno - step-punch-right back-fall")]
    [InlineData("clear-lane", "lies across with the head at the edge", "1200 1200 80 600", "Bruno@12/250", "8 Bruno cross-right wrist-catch-left arm-caught ; 11 Bruno - hip-throw-right thrown-over")]
    [InlineData("clear-lane", "runs into what stands there", "1200 1200 600 600 570 900 60 60", "Bruno@12/250", "8 Bruno swing-right outside-block-left limb-stopped ; 10 Bruno - run-off-right out-flees")]
    [InlineData("spacing,clear-lane", "is led off the floor", "1200 1200 60 600", "Bruno@12/250 Wanda@9/30", "8 Bruno cross-right wrist-catch-left arm-caught ; 11 Wanda cross-right shield-turn-left limb-stopped")]
    [InlineData("spacing", "finds no way onto the floor", "1200 1200 600 600 0 900 1200 20 door 600 1200", "Bruno@6/250 Wanda@12/250/20", "8 Bruno swing-right outside-block-left limb-stopped")]
    [InlineData("", "finds a way onto the floor", "1200 1200 600 600 0 900 1000 20 door 600 1200", "Bruno@6/250 Wanda@12/250/20", "8 Bruno swing-right outside-block-left limb-stopped")]
    [InlineData("clear-lane,underfoot", "comes onto the floor past who still falls", "1200 1200 600 600 door 0 800", "Bruno@12/150 Wanda@2/300/16 Ada@6/250", "8 Bruno swing-right outside-block-left limb-stopped ; 10 Bruno - step-punch-right back-fall ; 34 Ada swing-right outside-block-left limb-stopped")]
    [InlineData("spacing", "comes onto the floor through who has set off before the move before ended", "1200 1200 600 600 door 400 1200", "Ada@6/250 Bruno@12/570 Wanda@1/390/20", "18 Ada swing-right outside-block-left limb-stopped ; 20 Bruno swing-right outside-block-left limb-stopped")]
    [InlineData("", "comes onto the floor when they have gone by", "1200 1200 600 600 door 400 1200", "Ada@6/250 Bruno@12/570 Wanda@1/390/28", "18 Ada swing-right outside-block-left limb-stopped ; 20 Bruno swing-right outside-block-left limb-stopped")]
    public void The_floor_ends(string rules, string how, string floor, string cast, string moves) => Judged(rules, how, Planted(Of(floor.Split(' ')), cast, moves));

    private void Judged(string rules, string how, Routine routine)
    {
        var scene = new Scene(routine.Brief, Drafts.Book);
        var grave = Audit.Of(scene, routine).Findings.Where(f => f.Severity >= Severity.Broken).ToList();
        output.WriteLine(string.Join("\n", grave.Select(f => $"{f.Rule}: {f.Message}")));

        // What other rules say of it is left out on both sides.
        var wanted = rules.Split(',', StringSplitOptions.RemoveEmptyEntries);
        var others = grave.Select(f => f.Rule).Except(Floor).ToList();
        Assert.Equal(wanted.ToHashSet(StringComparer.Ordinal), grave.Select(f => f.Rule).Intersect(Floor).ToHashSet(StringComparer.Ordinal));
        Assert.True(Pinned.Solve(scene, routine, [.. others, .. wanted]) == CpAnswer.Optimal, $"without {rules} the solver still forbids: {how}");
        Assert.All(wanted, rule => Assert.True(Pinned.Solve(scene, routine, [.. others, .. wanted.Where(r => r != rule)]) == CpAnswer.Infeasible, $"by {rule} alone the solver allows: {how}"));
    }

    private static FloorPlan Of(string[] words)
    {
        var door = Array.IndexOf(words, "door");
        Centimetres Whole(int at) => new(int.Parse(words[at], System.Globalization.CultureInfo.InvariantCulture));
        return new FloorPlan
        {
            Width = Whole(0),
            Depth = Whole(1),
            MarkX = Whole(2),
            MarkY = Whole(3),
            Obstacles = words.Length >= 8 && door != 4 ? [new Obstacle("the crate", Whole(4), Whole(5), Whole(6), Whole(7))] : [],
            WaysIn = door > 0 ? [new WayIn("the door", Whole(door + 1), Whole(door + 2))] : [],
        };
    }

    private static Routine Planted(FloorPlan floor, string cast, string moves) => WrittenFight.Of(
        new Brief
        {
            Floor = floor,
            Hero = new HeroPart { Name = "Ines", Skill = Skill.Stunt },
            Attackers = [],
            Ending = new Ending([], null),
            Length = new Length(null, moves.Split(';').Length, 0),
        },
        Drafts.Book,
        cast,
        moves);
}
