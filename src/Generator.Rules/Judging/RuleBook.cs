using Generator.Rules.Rules;

namespace Generator.Rules.Judging;

/// <summary>All rules, in the order in which the help lists them.</summary>
public static class RuleBook
{
    public static readonly Domain.FixedList<Rule> All =
    [
        new FlowStance(),
        new FlowHands(),
        new FlowFacing(),
        new InReach(),
        new Thing(),
        new Prop(),
        new AnswersAttack(),
        new Opening(),
        new NearestFirst(),
        new ResetWindow(),
        new NoWaiting(),
        new DeadAir(),
        new OneContact(),
        new ClearLane(),
        new Spacing(),
        new Underfoot(),
        new Grip(),
        new OutStaysOut(),
        new Able(),
        new Exposure(),
        new TempoFloor(),
        new BlindSide(),
        new Sightline(),
        new Variety(),
        new Share(),
        new Arc(),
        new Rhythm(),
        new Story(),
        new Climax(),
        new Thinning(),
        new Manner(),
        new Momentum(),
        new Echo(),
        new Purpose(),
        new Length(),
        new Ending(),
        new Moments(),
        new Music(),
        new Setbacks(),
    ];

    /// <summary>
    /// The same in the order in which a search asks them, by position: first those of the floor, which refuse half of all that a search of a long fight tries. Nearly nothing is refused by the others.
    /// </summary>
    internal static readonly int[] Sifting = [.. All.Select((_, i) => i).OrderBy(i => All[i] is Spacing or ClearLane or Underfoot ? 0 : 1)];

    /// <summary>The rules of <see cref="Sifting"/> in that order, with their positions.</summary>
    internal static readonly (int At, Rule Rule)[] Sifted = [.. Sifting.Select(i => (i, All[i]))];

    private static readonly Dictionary<string, int> Positions = All.Select((rule, i) => (rule.Id, i)).ToDictionary(p => p.Id, p => p.i, StringComparer.Ordinal);

    /// <summary>Position of a rule in <see cref="All"/>; throws for an unknown id.</summary>
    public static int IndexOf(string id) => Positions[id];

    public static bool Knows(string id) => Positions.ContainsKey(id);
}
