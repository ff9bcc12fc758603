using Generator.Figures.Bodies;

namespace Generator.Figures.Posing;

/// <summary>How somebody bends who cannot get there as they are posed, or would go through the other one: at the waist, forward, back or to a side, and in the knees. All common practice, no source.</summary>
internal static class Leaning
{
    /// <summary>Degrees towards the other one or away.</summary>
    private static readonly double[] Forward = [0, 10, -10, 20, -20, 30, -30];

    /// <summary>Degrees to a side.</summary>
    private static readonly double[] Aside = [0, 15, -15];

    /// <summary>By how much bent knees let the hips down; share of stature.</summary>
    private static readonly double[] Down = [0, 0.05, 0.10];

    /// <summary>From the least to the most; as they are posed is not among them.</summary>
    private static readonly List<(double Forward, double Aside, double Down)> Bends =
        [.. (from f in Forward from a in Aside from d in Down select (f, a, d)).Skip(1).OrderBy(b => (Math.Abs(b.f) / 10) + (Math.Abs(b.a) / 7.5) + (b.d / 0.05))];

    /// <summary>The body bent in every way, the least first.</summary>
    /// <param name="figure">As posed.</param>
    /// <param name="line">Towards the other one, level and one long.</param>
    public static IEnumerable<Figure> Ways(Figure figure, Vec line)
    {
        var towards = Turned.Leftwards(Math.Atan2(line.X, line.Z) * 180 / Math.PI);
        foreach (var (forward, aside, down) in Bends)
        {
            var lower = down == 0 ? figure : Aiming.Shifted(figure, Vec.Up * -(down * figure.Stature));
            var bent = lower.Bent(towards * Turned.Forward(forward) * Turned.Sideways(aside) * towards.Inverse);
            if (bent.Lowest >= Math.Min(0, figure.Lowest) - 1e-6)
            {
                yield return bent;
            }
        }
    }
}
