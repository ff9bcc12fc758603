namespace Generator.Rules.Sight;

/// <summary>
/// When a planned miss reads as a hit to a lens. The fist stops a gap short of the face; seen off the line of the blow it moves sideways from the head
/// by the sine of the angle. Head and fist are those of men in ANSUR II (2012): length 200 mm, breadth 154 mm, hand breadth 88 mm. Lengths in
/// metres, angles in degrees.
/// </summary>
public static class MissGeometry
{
    /// <summary>From face to head centre.</summary>
    public const double HeadBehindFace = 0.100;

    public const double HeadHalfBreadth = 0.077;

    public const double FistHalfWidth = 0.044;

    /// <summary>Six inches between fist or foot and face (Martial Science Magazine, January 2022: one practitioner).</summary>
    public const double Gap = 0.152;

    /// <summary>What is nearer to the lens looks bigger: so much is let pass.</summary>
    public const double ScaleAllowed = 0.05;

    /// <summary>How far beside the head centre the fist centre is seen.</summary>
    public static double Offset(double gap, double angle) => (gap + HeadBehindFace) * Math.Sin(angle * Math.PI / 180);

    /// <summary>Largest angle at which the fist centre is seen over the head: the hit reads clean.</summary>
    public static double CleanWithin(double gap) => Angle(HeadHalfBreadth, gap);

    /// <summary>Largest angle at which the outlines of fist and head still touch.</summary>
    public static double TouchesWithin(double gap) => Angle(HeadHalfBreadth + FistHalfWidth, gap);

    /// <summary>How many times bigger a fist looks than the head behind it, the lens on the line of the blow.</summary>
    /// <param name="gap">From fist to face.</param>
    /// <param name="distance">From lens to face, more than the gap.</param>
    public static double Scale(double gap, double distance) => distance / (distance - gap);

    /// <summary>Nearest that a lens may be to the face: the gap is then a twentieth of the distance.</summary>
    public static double NearestLens(double gap) => gap / ScaleAllowed;

    private static double Angle(double reach, double gap) => reach >= gap + HeadBehindFace ? 90 : Math.Asin(reach / (gap + HeadBehindFace)) * 180 / Math.PI;
}
