using Generator.Domain;
using Generator.Rules.Rules;

namespace Generator.Rules.Sight;

/// <summary>
/// How hits look from a place for a camera. Nothing reads here that the sightline rule would not let read; nearness, height, and people and things in the way are
/// judged besides.
/// </summary>
public static class Lens
{
    /// <summary>Half the breadth of somebody in the way, in metres. Common practice, no source.</summary>
    public const double HalfBody = 0.25;

    public static Reading Of(SetUp setUp, Hit hit)
    {
        setUp = setUp.SeenFrom(hit.Mark);
        var (lens, face) = (setUp.Place, Point.Of(hit.Bearing, hit.Distance, hit.Height / 100.0));
        var sight = lens - face;
        var reading = OnItsOwn(setUp, hit, sight);
        return reading is Reading.Clean or Reading.Close && (hit.Others.Any(o => Hides(o, face, sight)) || hit.Screens.Any(s => s.Hides(face, sight))) ? Reading.Hidden : reading;
    }

    /// <summary>Reads clean or just.</summary>
    public static bool Reads(Reading reading) => reading <= Reading.Close;

    /// <summary>Degrees between the line of the blow and the line of sight, 0 to 90; from behind the hero as from behind the target.</summary>
    public static double AngleOf(SetUp setUp, Hit hit) => AngleOf(hit.Bearing, setUp.SeenFrom(hit.Mark).Place - Point.Of(hit.Bearing, hit.Distance, hit.Height / 100.0));

    private static Reading OnItsOwn(SetUp setUp, Hit hit, Point sight)
    {
        var sells = hit.Sells;
        if (sells == Sells.Any)
        {
            return Reading.Clean;
        }

        if (!Sightline.Reads(sells, Sightline.OffLine(setUp.Bearing, hit.Bearing)))
        {
            return Reading.Open;
        }

        var angle = AngleOf(hit.Bearing, sight);
        var (clean, touches) = sells == Sells.Along
            ? (MissGeometry.CleanWithin(hit.Gap), MissGeometry.TouchesWithin(hit.Gap))
            : (Sightline.AcrossWithin * (double)Bearing.DegreesPerHalfHour, Sightline.AcrossWithin * (double)Bearing.DegreesPerHalfHour);
        if (angle > touches + 1e-9)
        {
            return Reading.Open;
        }

        if (sight.Length < MissGeometry.NearestLens(hit.Gap))
        {
            return Reading.TooNear;
        }

        return angle > clean + 1e-9 ? Reading.Close : Reading.Clean;
    }

    private static double AngleOf(int bearing, Point sight)
    {
        var (x, y) = new Bearing(bearing).Direction;
        var along = Math.Abs((sight.X * x) + (sight.Y * y));
        return sight.Length == 0 ? 0 : Math.Acos(Math.Min(1, along / sight.Length)) * 180 / Math.PI;
    }

    /// <summary>The line of sight passes through the body, lower than the crown.</summary>
    private static bool Hides(Bystander other, Point face, Point sight)
    {
        var body = Point.Of(other.Bearing, other.Distance, 0) - face;
        var flat = (sight.X * sight.X) + (sight.Y * sight.Y);
        if (flat == 0)
        {
            return false;
        }

        var share = ((body.X * sight.X) + (body.Y * sight.Y)) / flat;
        var (aside, ahead) = (body.X - (share * sight.X), body.Y - (share * sight.Y));
        return share is > 0 and < 1 && (aside * aside) + (ahead * ahead) < HalfBody * HalfBody && face.Z + (share * sight.Z) < other.Height / 100.0;
    }
}
