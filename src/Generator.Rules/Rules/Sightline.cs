using Generator.Domain;
using Generator.Rules.Replaying;

namespace Generator.Rules.Rules;

/// <summary>
/// Each non-contact hit sells to at least one camera or audience side. With 15 cm to the face a straight miss reads within about 18° of the
/// line through both performers, one half hour; a swung one reads where it crosses between the lens and the face. A blow that is answered may be seen to miss.
/// Off without a camera.
/// </summary>
public sealed class Sightline : Rule
{
    /// <summary>Farthest off the line of the two performers at which a straight miss reads, in half hours.</summary>
    public const int AlongWithin = 1;

    /// <summary>The same for a swung one.</summary>
    public const int AcrossWithin = 4;

    public override string Id => "sightline";

    public override string Title => "Each non-contact hit sells to at least one camera or audience side.";

    public override Severity Worst => Severity.Rough;

    public override object? Observe(Scene scene, object? memory, Step step, Tally tally)
    {
        if (!step.HasTarget || step.IsAnswered || step.Technique is not { } technique || IsSeen(scene, technique, step.TargetBearing, step.Before.Mark))
        {
            return null;
        }

        if (tally.Count(Severity.Rough, 1))
        {
            tally.Tell(Told(scene, step, technique));
        }

        return null;
    }

    /// <summary>The technique reads to some camera with its target on this bearing, or is none that must: a contact, no hit, or no camera is there.</summary>
    public static bool IsSeen(Scene scene, Technique technique, int target, int mark = 0)
    {
        var cameras = scene.Brief.Cameras;
        if (cameras.Count == 0 || technique is not { IsHit: true, Kind: ContactKind.NonContact })
        {
            return true;
        }

        for (var c = 0; c < cameras.Count; c++)
        {
            if (Reads(technique.Sells, OffLine(scene.Marks.CameraFrom(mark, c, cameras[c]), target)))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>How far a lens is off the line through hero and target, 0 to 6 half hours; from behind the hero reads as from behind the target.</summary>
    public static int OffLine(Bearing camera, int target)
    {
        var apart = camera.Apart(new Bearing(target));
        return Math.Min(apart, (Bearing.Circle / 2) - apart);
    }

    /// <summary>A miss of this kind reads to a lens so far off the line.</summary>
    public static bool Reads(Sells sells, int offLine) => sells switch
    {
        Sells.Along => offLine <= AlongWithin,
        Sells.Across => offLine <= AcrossWithin,
        _ => true,
    };

    private Finding Told(Scene scene, Step step, Technique technique)
    {
        var (nearest, bearing) = scene.Brief.Cameras.Select((c, i) => (Camera: c, Bearing: scene.Marks.CameraFrom(step.Before.Mark, i, c))).MinBy(c => OffLine(c.Bearing, step.TargetBearing));
        return At(scene, step, Severity.Rough, $"{Words.Cap(technique.Name)} on {Words.Name(scene, step.Row.Attacker)} at {new Bearing(step.TargetBearing).InWords} is seen to miss by every camera; {nearest.Name} is the nearest to one that it sells to.") with
        {
            Points = 1,
            Measured = OffLine(bearing, step.TargetBearing) * Bearing.DegreesPerHalfHour,
            Allowed = (technique.Sells == Sells.Along ? AlongWithin : AcrossWithin) * Bearing.DegreesPerHalfHour,
            Unit = "degrees",
            Advice = "Turn the exchange towards a camera, or choose a hit that sells from there.",
        };
    }
}
