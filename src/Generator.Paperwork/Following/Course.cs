using Generator.Domain;
using Generator.Paperwork.Text;
using Generator.Rules.Replaying;

namespace Generator.Paperwork.Following;

/// <summary>
/// A routine as it runs in time: who does what, where, in every half count. Replay says what is true at the moves; where somebody is between
/// them is worked out here: whoever attacks sets off as late as they can and still land in time.
/// </summary>
/// <param name="From">First half count: the earliest at which anybody sets off.</param>
/// <param name="To">End of the last move and one count after it.</param>
/// <param name="Performers">The hero, then the attackers in the order of the brief.</param>
public sealed record Course(int From, int To, IReadOnlyList<PerformerCourse> Performers)
{
    public PerformerCourse Hero => Performers[0];

    /// <summary>In the order of the brief.</summary>
    public IReadOnlyList<PropCourse> Props { get; init; } = [];

    /// <summary>Who plays a hurt part of the body, in the order in which it comes about.</summary>
    public IReadOnlyList<HurtLimb> Hurts { get; init; } = [];

    public static Course Of(PaperSource source)
    {
        var steps = source.Steps;
        var attackers = Enumerable.Range(0, source.Scene.Cast).Select(a => new AttackerTrail(source, a)).ToList();
        var from = attackers.Select(a => a.Earliest).Append(0).Min();
        var to = source.End + HalfCounts.PerCount;
        var hero = HeroTrail.Of(source, from, to);
        return new Course(from, to, [hero, .. attackers.Select(a => a.Course(from, to, hero.Ways.Count > 1 ? hero.Ways : []))]) { Props = PropCourse.Of(source, from), Hurts = [.. steps.SelectMany(HurtLines.Of)] };
    }
}
