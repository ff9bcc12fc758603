using Generator.Domain;

namespace Generator.Rules.Shapes;

/// <summary>What thinning asks, worked out of the brief. Common practice, no source.</summary>
internal static class Thin
{
    /// <summary>Of a hundred of the length asked for when the first is out at the latest.</summary>
    public const int FirstOut = 45;

    /// <summary>Moves that make a part.</summary>
    public const int FewestMoves = 4;

    /// <summary>Moves of the fight for each attacker from which everybody can have as many.</summary>
    private const int MovesForEach = 6;

    /// <summary>Blows that an audience believes somebody takes, and who is to go out last.</summary>
    private const int Blows = 8;

    private const int BlowsOfLast = 12;

    /// <summary>Half counts that a move is reckoned with where the brief says how many counts and not how many moves.</summary>
    private const int HalfCountsForMove = 4;

    /// <summary>Blows that an attacker may take; a single one as many as there are.</summary>
    public static int MostBlows(Scene scene, int attacker) => scene.Cast == 1 ? int.MaxValue
        : string.Equals(scene.Brief.Ending?.Last, scene.Brief.Attackers[attacker].Name, StringComparison.Ordinal) ? BlowsOfLast : Blows;

    /// <summary>The fight is long enough for everybody to have a part.</summary>
    public static bool HasRoom(Scene scene) => scene.Brief.Length is { } length
        && (length.Moves ?? (HalfCounts.PerCount * length.Counts / HalfCountsForMove) ?? 0) >= MovesForEach * scene.Cast;

    /// <summary>Which hundredth of the length asked for a move ends in, rounded up: of its counts where it has some, else of its moves. 0 without a length.</summary>
    /// <param name="scene">The brief.</param>
    /// <param name="end">End of the move in half counts.</param>
    /// <param name="index">Its number from 0.</param>
    public static int PercentAt(Scene scene, int end, int index) => scene.Brief.Length switch
    {
        { Counts: { } counts } => Up(end, HalfCounts.PerCount * counts),
        { Moves: { } moves } => Up(index, moves),
        _ => 0,
    };

    /// <summary>Tenths of the fight, begun, by which the first out of several comes too late with this move.</summary>
    public static int Late(Scene scene, int end, int index) => scene.Cast == 1 ? 0 : Math.Max(0, PercentAt(scene, end, index) - FirstOut + 9) / 10;

    private static int Up(int part, int whole) => ((100 * part) + whole - 1) / whole;
}
