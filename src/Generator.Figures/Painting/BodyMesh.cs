using Generator.Figures.Bodies;

namespace Generator.Figures.Painting;

/// <summary>The mannequin as a surface of triangles, at rest and one tall: every corner turns with one joint.</summary>
public sealed class BodyMesh
{
    /// <summary>Corners round a limb.</summary>
    private const int Round = 10;

    /// <summary>Rings from the middle of a rounded end to its tip.</summary>
    private const int Rings = 3;

    private readonly List<(Vec At, Vec Out, Joint Bone)> corners = [];
    private readonly List<int> triangles = [];

    private BodyMesh(IEnumerable<Capsule> capsules)
    {
        foreach (var capsule in capsules)
        {
            Add(capsule);
        }
    }

    /// <summary>Where a corner is, which way the surface looks there, and the joint with which it turns.</summary>
    public IReadOnlyList<(Vec At, Vec Out, Joint Bone)> Corners => corners;

    /// <summary>Three corners a triangle, against the clock seen from outside.</summary>
    public IReadOnlyList<int> Triangles => triangles;

    /// <summary>Trunk, limbs, head and nose.</summary>
    public static BodyMesh Body() => new(Mannequin.AtRest);

    /// <summary>A hero's belt.</summary>
    public static BodyMesh Belt() => new([Mannequin.Belt]);

    /// <summary>An attacker's cap.</summary>
    public static BodyMesh Cap() => new([Mannequin.Cap]);

    private void Add(Capsule capsule)
    {
        var axis = (capsule.To - capsule.From).Unit;
        var aside = (Math.Abs(axis.Y) < 0.9 ? Vec.Up : Vec.Left).Beside(axis).Unit;
        var across = axis.Cross(aside);
        var first = corners.Count;
        for (var ring = 0; ring <= (2 * Rings) + 1; ring++)
        {
            var starts = ring <= Rings;
            var (sin, cos) = Math.SinCos(Math.PI / 2 * (starts ? ring : ring - 1) / Rings);
            for (var i = 0; i < Round; i++)
            {
                var (up, right) = Math.SinCos(2 * Math.PI * i / Round);
                var way = (aside * (right * sin)) + (across * (up * sin)) - (axis * cos);
                corners.Add(((starts ? capsule.From : capsule.To) + (way * (starts ? capsule.FromRadius : capsule.ToRadius)), way, capsule.Bone));
            }
        }

        for (var ring = 0; ring < (2 * Rings) + 1; ring++)
        {
            for (var i = 0; i < Round; i++)
            {
                var (a, b) = (first + (ring * Round) + i, first + (ring * Round) + ((i + 1) % Round));
                triangles.AddRange(ring == 0 ? [a, b + Round, a + Round] : ring == 2 * Rings ? [a, b, a + Round] : [a, b, b + Round, a, b + Round, a + Round]);
            }
        }
    }
}
