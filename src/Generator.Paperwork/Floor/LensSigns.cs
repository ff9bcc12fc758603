using Generator.Domain;
using Generator.Paperwork.Text;
using Generator.Rules.Bodies;
using Generator.Rules.Replaying;
using Generator.Rules.Sight;
using Sight = Generator.Rules.Sight;

namespace Generator.Paperwork.Floor;

/// <summary>Cameras on a plan of the floor.</summary>
/// <param name="hits">The planned misses of the routine.</param>
/// <param name="window">The part of the floor that is drawn.</param>
internal sealed class LensSigns(IReadOnlyList<Hit> hits, PlanWindow window)
{
    /// <summary>A camera's sign stays whole on the drawing, by so many units.</summary>
    private const double Inside = 10;

    /// <summary>The same on another part of the floor.</summary>
    public LensSigns On(PlanWindow other) => new(hits, other);

    /// <summary>The room that a sign takes.</summary>
    public static Box RoomOf(Lens lens) => Box.Around(lens.At.X, lens.At.Y, 18, 18);

    /// <summary>Where a camera stands, or the edge of the drawing towards it, and to where the hits are that sell to it.</summary>
    public Lens Of(Camera camera, IReadOnlyList<Step> steps)
    {
        var at = window.Held(Place.At(camera.Bearing.HalfHours, camera.Distance.Value), Inside);
        return new Lens(at, camera.Bearing.Degrees + 180, [.. ReadFrom(camera, steps).Select(h => window.Held(h.Mark + Place.At(h.Bearing, h.Distance), 0))]);
    }

    /// <summary>The same judgement as that of the camera plan.</summary>
    private IEnumerable<Hit> ReadFrom(Camera camera, IReadOnlyList<Step> steps) =>
        hits.Where(h => steps.Any(s => s.Index + 1 == h.Move) && Sight.Lens.Reads(Sight.Lens.Of(SetUp.Of(camera), h)));

    /// <summary>What it is called, how far off it is where it is outside, and what it sells.</summary>
    public string Text(Camera camera, IReadOnlyList<Step> steps)
    {
        var far = $", {Words.Number(Math.Round(camera.Distance.Metres, camera.Distance.Value < 2000 ? 1 : 0))} m";
        var name = TextSize.Fit(Page.Clean(camera.Text), FloorPainter.Size, Math.Min(160, window.Width - TextSize.Width(far, FloorPainter.Size) - Shapes.Radius));
        if (!window.Keeps(Place.At(camera.Bearing.HalfHours, camera.Distance.Value), Inside))
        {
            name += far;
        }

        var reads = ReadFrom(camera, steps).Select(h => Words.MoveTag(h.Move)).ToList();
        return reads.Count == 0 ? name : $"{name}, sells {string.Join(", ", reads)}";
    }
}
