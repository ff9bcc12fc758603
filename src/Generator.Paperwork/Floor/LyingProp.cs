using Generator.Figures.Painting;
using Generator.Paperwork.Following;
using Generator.Paperwork.Text;

namespace Generator.Paperwork.Floor;

/// <summary>A prop on the floor of a plan.</summary>
/// <param name="At">Where it lies.</param>
/// <param name="Name">What its label says.</param>
/// <param name="Path">What is drawn, round 0.</param>
public sealed record LyingProp(Point At, string Name, string Path)
{
    /// <summary>No shorter than this, in units of the drawing.</summary>
    private const double Least = 18;

    /// <summary>Half of the room of its sign for labels.</summary>
    public const double Room = 9;

    /// <summary>Degrees by which it is turned: along no line of the dial.</summary>
    public const double Turned = -22;

    /// <summary>Longest name; what does not fit is cut, so that there is room for when it lies there.</summary>
    private const double Longest = 120;

    /// <summary>What lies on the floor at any time of a part, each place once, with when if that is not throughout.</summary>
    /// <param name="course">Where everything is.</param>
    /// <param name="window">The plan.</param>
    /// <param name="from">Half count in which the part begins.</param>
    /// <param name="to">In which it ends.</param>
    public static IEnumerable<LyingProp> In(Course course, PlanWindow window, int from, int to) =>
        from prop in course.Props
        from lies in prop.Lying(@from, to).DistinctBy(l => l.Spell.State.Place)
        where window.Shows(lies.Spell.State.Place)
        let begins = lies.Spell.From > @from ? ", from " + Words.AtCount(lies.Spell.From) : string.Empty
        let ends = lies.To < to ? ", until " + Words.AtCount((int)lies.To) : string.Empty
        select new LyingProp(window.Of(lies.Spell.State.Place), TextSize.Name(prop.Name, FloorPainter.Size, Longest) + begins + ends, PathOf(prop, window.Scale));

    /// <summary>Where props come to lie at any time, with the room of their names under them.</summary>
    public static IEnumerable<Box> Rooms(Course course, PlanWindow window) =>
        from prop in course.Props
        from spell in prop.Spells
        where spell.State.Lies
        let at = window.Of(spell.State.Place)
        select Box.Around(at.X, at.Y + (Room / 2), TextSize.Width(prop.Name, FloorPainter.Size), 4 * Room);

    /// <summary>What is drawn of a prop on a plan of that scale.</summary>
    /// <param name="prop">The prop.</param>
    /// <param name="scale">Units in a centimetre.</param>
    public static string PathOf(PropCourse prop, double scale) => PropPicture.Lying(prop.Kind, scale * 100, Least);
}
