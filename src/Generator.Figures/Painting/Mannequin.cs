using Generator.Domain;
using Generator.Figures.Bodies;

namespace Generator.Figures.Painting;

/// <summary>The capsules of a body.</summary>
public static class Mannequin
{
    /// <summary>Trunk, limbs, head and nose of a body at rest, one tall: each turns with its bone.</summary>
    public static IReadOnlyList<Capsule> AtRest { get; } = [.. Of(Rig.AtRest), .. Head(Rig.AtRest)];

    /// <summary>A hero's belt, at rest.</summary>
    public static Capsule Belt { get; } = new(Rig.AtRest[Joint.Waist] - (Vec.Left * 0.012), Rig.AtRest[Joint.Waist] + (Vec.Left * 0.012), 0.070, 0.070, false, Joint.Waist);

    /// <summary>An attacker's cap, at rest.</summary>
    public static Capsule Cap { get; } =
        new(Rig.AtRest[Joint.Crown] - (Vec.Up * 0.048), Rig.AtRest[Joint.Crown] - (Vec.Up * 0.046) + (Vec.Ahead * 0.012), 0.052, 0.050, false, Joint.Head);

    private static IEnumerable<Capsule> Head(Figure rest) =>
    [
        new Capsule(rest[Joint.Head] + (Vec.Up * 0.045), rest[Joint.Crown] - (Vec.Up * 0.05), 0.044, 0.050, false, Joint.Head),
        new Capsule(rest.HeadCentre + (Vec.Ahead * 0.04), rest.HeadCentre + (Vec.Ahead * 0.075) - (Vec.Up * 0.01), 0.012, 0.007, false, Joint.Head),
    ];

    /// <summary>Trunk and limbs of a body as it is; metres.</summary>
    internal static IEnumerable<Capsule> Of(Figure body)
    {
        yield return Part(Joint.LeftHip, Joint.RightHip, 0.052, 0.052, Joint.Hips);
        yield return Part(Joint.Hips, Joint.Chest, 0.062, 0.066, Joint.Waist);
        yield return Part(Joint.Chest, Joint.Neck, 0.066, 0.045, Joint.Chest);
        yield return Part(Joint.LeftShoulder, Joint.RightShoulder, 0.036, 0.036, Joint.Chest);
        yield return Part(Joint.Neck, Joint.Head, 0.030, 0.028, Joint.Neck);
        foreach (var side in Enum.GetValues<Side>())
        {
            var (shoulder, elbow, wrist, hand) = Skeleton.Arm(side);
            var (hip, knee, ankle, ball) = Skeleton.Leg(side);
            var left = side == Side.Left;
            yield return Part(shoulder, elbow, 0.034, 0.026, shoulder);
            yield return Part(elbow, wrist, 0.027, 0.019, elbow, left);
            yield return body.IsOpen ? Part(wrist, hand, 0.021, 0.012, wrist) : Fist(wrist, hand);
            yield return Part(hip, knee, 0.056, 0.037, hip);
            yield return Part(knee, ankle, 0.039, 0.024, knee, left);
            yield return new Capsule(body.Heel(side), body[ball], 0.022 * body.Stature, 0.014 * body.Stature, Banded: false, ankle);
        }

        Capsule Part(Joint from, Joint to, double fromRadius, double toRadius, Joint bone, bool banded = false) =>
            new(body[from], body[to], fromRadius * body.Stature, toRadius * body.Stature, banded, bone);

        Capsule Fist(Joint wrist, Joint hand) => new(body[wrist] + ((body[hand] - body[wrist]) * 0.6), body[hand], 0.025 * body.Stature, 0.026 * body.Stature, Banded: false, wrist);
    }
}
