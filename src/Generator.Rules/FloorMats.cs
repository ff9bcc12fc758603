using Generator.Domain;
using Generator.Rules.Bodies;

namespace Generator.Rules;

/// <summary>
/// The mats of a floor. On a hard floor with some, a fall that needs a mat is allowed where one holds all of the body, half its breadth from the mat's edge; on a matted or sprung floor they
/// change nothing, and on a wet or uneven one they slip, so that nothing is allowed there that is not without them.
/// </summary>
public sealed class FloorMats
{
    private readonly FloorPlan floor;
    private readonly IReadOnlyList<Place> marks;
    private readonly int radius;

    public FloorMats(Brief brief, Settle settle)
    {
        (floor, radius) = (brief.Floor, settle.BodyRadius.Value);
        var first = new Place(floor.MarkX.Value, floor.MarkY.Value);
        marks = brief.Ally is { } ally ? [first, new Place(first.X + ally.Mark.X, first.Y + ally.Mark.Y)]
            : brief.Marks.Count > 0 ? [.. brief.Marks.Select(m => new Place(m.X.Value, m.Y.Value))] : [first];
    }

    /// <summary>Where somebody falls matters: the floor is hard, and there are mats.</summary>
    public bool Matter => floor is { Surface: Surface.Hard, Mats.Count: > 0 };

    /// <summary>Some mat holds a body that lies along a line, or somebody who falls along it.</summary>
    /// <param name="from">One end, from the first mark.</param>
    /// <param name="to">The other.</param>
    public bool Hold(Place from, Place to) => Room(from, to) >= radius;

    /// <summary>Centimetres from a line to the edge of the mat that holds it best; below 0 where it goes beyond.</summary>
    public int Room(Place from, Place to) => floor.Mats.Max(m => Math.Min(Room(m, from), Room(m, to)));

    /// <summary>One mat reaches so many centimetres round every mark, so that the hero may fall whichever way on each and between them.</summary>
    /// <param name="reach">In centimetres.</param>
    public bool ReachRoundMarks(int reach) => floor.Mats.Any(m => marks.All(p => FromEdge(m, p.X, p.Y) >= reach));

    private int Room(Mat mat, Place place) => FromEdge(mat, FloorGeometry.Whole(floor.MarkX.Value + place.X), FloorGeometry.Whole(floor.MarkY.Value + place.Y));

    private static int FromEdge(Mat mat, double x, double y) =>
        (int)Math.Min(Math.Min(x - mat.X.Value, mat.X.Value + mat.Width.Value - x), Math.Min(y - mat.Y.Value, mat.Y.Value + mat.Depth.Value - y));
}
