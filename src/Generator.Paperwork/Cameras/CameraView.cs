using Generator.Domain;
using Generator.Figures.Painting;
using Generator.Figures.Posing;
using Generator.Paperwork.Floor;
using Generator.Paperwork.Following;
using Generator.Rules.Bodies;
using Generator.Rules.Sight;
using Sight = Generator.Rules.Sight;

namespace Generator.Paperwork.Cameras;

/// <summary>The camera plan as pictures: where every set-up stands and how wide it must look, and what it sees of each planned miss.</summary>
/// <param name="source">The routine.</param>
/// <param name="plan">Which hits sell to what.</param>
/// <param name="acted">The fight in space; null where no figures are drawn.</param>
public sealed class CameraView(PaperSource source, CameraPlan plan, Acted? acted)
{
    /// <summary>A camera farther from the mark than this stands at the edge of the drawing, with its distance; centimetres.</summary>
    private const int Farthest = 900;

    /// <summary>Room for a body beside the middle of it, and behind it; centimetres.</summary>
    private const double Beside = 50;

    private const double Metre = 100;

    public PaperSource Source => source;

    public CameraPlan Plan => plan;

    public FloorPicture Picture => field ??= Painter.Empty();

    /// <summary>What each set-up is called.</summary>
    public IReadOnlyList<string> Names => field ??= [.. plan.Places.Select((_, i) => CameraSheet.Name(plan, i))];

    /// <summary>Of every set-up to which a hit sells.</summary>
    public IReadOnlyList<CameraCone> Cones => field ??= [.. plan.Places.Select((p, i) => ConeOf(i, p)).OfType<CameraCone>()];

    /// <summary>Where those are hit whose hits sell to a set-up, and the others.</summary>
    public IEnumerable<(Floor.Point At, bool Sells)> Marks => plan.Hits.Select(h => (Painter.Window.Of(PlaceOf(h)), !plan.Unread.Contains(h)));

    /// <summary>What a set-up sees of a hit; null where no figures are drawn.</summary>
    public Still? StillOf(int place, Hit hit)
    {
        if (acted is null)
        {
            return null;
        }

        var (time, setUp) = (HeroTrail.SoundsAt(source.Steps[hit.Move - 1]), plan.Places[place]);
        var course = Course.Performers.Select(p => p.FigureAt(time) != Following.Figure.Away).ToList();
        var bodies = acted.Parts.Where((_, i) => course[i]).Select(p => (p.KeyAt(time).Body, p.Attacker < 0));
        return Still.Of(bodies, acted.PropsAt(time), Stage.Of(setUp.Bearing, setUp.Distance, setUp.Height), Stage.Of(PlaceOf(hit), hit.Height / Metre));
    }

    internal static Reading ReadingOf(SetUp setUp, Hit hit) => Sight.Lens.Of(setUp, hit);

    internal static bool Reads(Reading reading) => Sight.Lens.Reads(reading);

    private Course Course => field ??= Course.Of(source);

    private FloorPainter Painter => field ??= FloorPainter.OfCameras(source, Course, [.. plan.Places.Select((p, i) => new Camera(i < plan.Given.Count ? plan.Given[i].Name : Names[i], p.Bearing, p.Distance, p.Height))], Farthest);

    private static Place Standing(SetUp setUp) => Place.At(setUp.Bearing.HalfHours, setUp.Distance.Value);

    private static Place PlaceOf(Hit hit) => hit.Mark + Place.At(hit.Bearing, hit.Distance);

    private CameraCone? ConeOf(int place, SetUp setUp)
    {
        var lens = Standing(setUp);
        var towards = Math.Atan2(-lens.Y, -lens.X);
        List<Place> people = [.. plan.Hits.Where(h => Reads(ReadingOf(setUp, h))).SelectMany(h => new[] { PlaceOf(h), h.Mark + Place.At(h.Bearing, source.Steps[h.Move - 1].Distance), h.Mark }).Where(p => p.To(lens) > Beside)];
        if (people.Count == 0)
        {
            return null;
        }

        var seen = people.Select(p => (Way: Math.IEEERemainder(Math.Atan2(p.Y - lens.Y, p.X - lens.X) - towards, 2 * Math.PI), Half: Math.Asin(Beside / p.To(lens)))).ToList();
        var (least, most) = (seen.Min(s => s.Way - s.Half), seen.Max(s => s.Way + s.Half));
        var far = people.Max(p => p.To(lens)) + Beside;
        IReadOnlyList<Floor.Point> ends = [.. new[] { least, most }.Select(a => Painter.Window.Held(new Place(lens.X + (far * Math.Cos(towards + a)), lens.Y + (far * Math.Sin(towards + a))), 0))];
        return new CameraCone(place, [Picture.Lenses[place].At, .. ends], (int)Math.Ceiling((most - least) * 180 / Math.PI));
    }
}
