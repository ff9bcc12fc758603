using Generator.Domain;
using Generator.Rules.Bodies;

namespace Generator.Rules;

/// <summary>
/// The hero's marks as places on the floor, which are counted from the first of them, and what is seen from each: the floor round it, the cameras. Bearings and distances
/// are the view from the mark of the moment.
/// </summary>
public sealed class Marks
{
    private readonly Place[] places;
    private readonly FloorReach[] floors;
    private readonly Bearing[][] cameras;

    public Marks(Brief brief, Settle settle, FloorReach first)
    {
        places = [.. brief.Marks.Select(m => new Place(m.X.Value - brief.Floor.MarkX.Value, m.Y.Value - brief.Floor.MarkY.Value))];
        floors = [.. brief.Marks.Select((m, i) => i == 0 ? first : new FloorReach(brief.Floor with { MarkX = m.X, MarkY = m.Y }, settle, brief.Cameras, places[i]))];
        if (brief.Ally is { } ally)
        {
            // Nobody travels: the hero's mark is the first, the ally's the second, whoever of the two is looked at.
            places = [default, new Place(ally.Mark.X, ally.Mark.Y)];
            floors = [first, new FloorReach(brief.Floor with { MarkX = new Centimetres(brief.Floor.MarkX.Value + ally.Mark.X), MarkY = new Centimetres(brief.Floor.MarkY.Value + ally.Mark.Y) }, settle, brief.Cameras, places[1])];
        }

        cameras = [.. places.Select(p => brief.Cameras.Select(c => BearingOf(c, p)).ToArray())];
    }

    private Marks(FloorReach only) => (places, floors, cameras) = ([default], [only], []);

    /// <summary>Of a fight on one mark.</summary>
    public static Marks One(FloorReach floor) => new(floor);

    /// <summary>How many there are.</summary>
    public int Count => places.Length;

    /// <summary>Where a mark is.</summary>
    public Place this[int mark] => places[mark];

    /// <summary>How far the floor reaches round a mark.</summary>
    public FloorReach FloorOf(int mark) => floors[mark];

    /// <summary>Where a camera is seen from a mark; a side of the audience is on the same side from everywhere.</summary>
    public Bearing CameraFrom(int mark, int camera, Camera itself) => cameras.Length == 0 ? itself.Bearing : cameras[mark][camera];

    /// <summary>Centimetres from one mark to another.</summary>
    public int Way(int from, int to) => FloorGeometry.Whole(places[from].To(places[to]));

    /// <summary>Bearing of one mark from another, in half hours.</summary>
    public int Heading(int from, int to) => (places[to] - places[from]).Seen().Bearing;

    private static Bearing BearingOf(Camera camera, Place mark) =>
        camera.IsAudience ? camera.Bearing : new Bearing((Place.At(camera.Bearing.HalfHours, camera.Distance.Value) - mark).Seen().Bearing);
}
