namespace Generator.Domain;

/// <summary>Straight ways on the floor and what lies on them.</summary>
public static class StraightWay
{
    /// <summary>After how many steps a way comes between two lines square to it, and after how many it leaves them; the first is the greater where it never does.</summary>
    /// <param name="step">How far one step leads across the lines; near 0 for a way along them.</param>
    /// <param name="low">The nearer line, counted from where the way starts.</param>
    /// <param name="high">The farther one.</param>
    public static (double Enter, double Leave) Slab(double step, double low, double high)
    {
        if (Math.Abs(step) < 1e-9)
        {
            return low <= 0 && high >= 0 ? (double.MinValue, double.MaxValue) : (double.MaxValue, double.MinValue);
        }

        return step > 0 ? (low / step, high / step) : (high / step, low / step);
    }
}
