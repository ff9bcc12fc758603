using Generator.Domain;

namespace Generator.Rules.Connecting;

/// <summary>Sets of bearings relative to the hero's facing, one bit each half hour.</summary>
internal static class Bearings
{
    public const int All = (1 << Bearing.Circle) - 1;

    /// <summary>The bearings in a window.</summary>
    public static int In(Window window) => Where(b => window.Contains(new Turn(b)));

    /// <summary>The bearings at which somebody who was in both windows is once the hero has turned.</summary>
    public static int After(Window one, Window other, Turn turn) => Where(b =>
    {
        var before = new Turn(b + turn.HalfHours);
        return one.Contains(before) && other.Contains(before);
    });

    /// <summary>The bearings from which a target comes into a window with a turn of at most so many half hours.</summary>
    /// <param name="window">Where the target must lie.</param>
    /// <param name="turn">Farthest turn.</param>
    /// <param name="from">Where the target must lie as well after that turn, for an attack that only comes from there.</param>
    public static int Within(Window window, int turn, Window from) => Where(b =>
    {
        var made = window.TurnFor(new Turn(b)).HalfHours;
        return Math.Abs(made) <= turn && from.Contains(new Turn(b - made));
    });

    /// <summary>"12 to 3:30", from the first bearing of the longest run.</summary>
    public static string Words(int set) =>
        set == All ? "everywhere" : string.Join(", ", Enumerable.Range(0, Bearing.Circle).Where(b => (set & (1 << b)) != 0).Select(b => new Bearing(b).ToClockText()));

    private static int Where(Func<int, bool> holds)
    {
        var set = 0;
        for (var b = 0; b < Bearing.Circle; b++)
        {
            set |= holds(b) ? 1 << b : 0;
        }

        return set;
    }
}
