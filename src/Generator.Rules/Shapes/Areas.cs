using Generator.Domain;
using Generator.Rules.Bodies;
using Generator.Rules.Replaying;

namespace Generator.Rules.Shapes;

/// <summary>
/// How much of the floor is used: which of its nine areas (three across, three deep, as a stage is divided) anybody has stood in, gone through or lain in,
/// the hero at the mark included.
/// </summary>
/// <param name="Used">1 to 9; the areas have the same size.</param>
public readonly record struct Areas(int Used)
{
    /// <summary>All of them.</summary>
    public const int All = 9;

    /// <summary>Centimetres between two points at which a way is looked at.</summary>
    private const double Every = 25;

    public static Areas Of(Scene scene, FightState end)
    {
        var floor = scene.Brief.Floor;
        var places = Enumerable.Range(0, scene.Cast).SelectMany(a => end.Attackers[a].Way.Chain()).Concat(end.HeroWay?.Chain() ?? []).SelectMany(On).Append(new Place(0, 0));
        return new Areas(places.Select(p => AreaOf(floor, p)).Where(a => a >= 0).Distinct().Count());
    }

    private static IEnumerable<Place> On(Leg leg)
    {
        var parts = Math.Max(1, (int)Math.Ceiling(leg.Start.To(leg.End) / Every));
        return Enumerable.Range(0, parts + 1).Select(i => leg.Start.Towards(leg.End, (double)i / parts));
    }

    private static int AreaOf(FloorPlan floor, Place place)
    {
        var (x, y) = (floor.MarkX.Value + place.X, floor.MarkY.Value + place.Y);
        return x < 0 || y < 0 || x >= floor.Width.Value || y >= floor.Depth.Value ? -1 : ((int)(3 * y / floor.Depth.Value) * 3) + (int)(3 * x / floor.Width.Value);
    }
}
