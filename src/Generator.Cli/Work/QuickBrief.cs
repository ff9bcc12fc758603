using Generator.Domain;

namespace Generator.Cli.Work;

/// <summary>A brief for those who only say how many and how long: everything else takes its default.</summary>
internal static class QuickBrief
{
    public const int DefaultAttackers = 3;

    public const int DefaultCounts = 48;

    /// <summary>Trees, so that nobody takes them for people of the cast.</summary>
    private static readonly string[] Names = ["Ash", "Birch", "Cedar", "Elm", "Fir", "Juniper", "Larch", "Oak"];

    private static readonly string[] Numbers = ["one", "two", "three", "four", "five", "six", "seven", "eight"];

    /// <summary>Most attackers that a brief may have.</summary>
    public static int Most => Names.Length;

    /// <param name="attackers">1 to 8; null is 3.</param>
    /// <param name="counts">Length in counts; null leaves it free when moves are given, else it is 48.</param>
    /// <param name="moves">Length in moves; null leaves it free.</param>
    public static Brief Of(int? attackers, int? counts, int? moves)
    {
        var length = counts is null && moves is null ? DefaultCounts : counts;
        var cast = Names.Take(attackers ?? DefaultAttackers).Select(n => new AttackerPart { Name = n }).ToList();
        return new Brief
        {
            Title = "One against " + Numbers[cast.Count - 1],
            Attackers = cast,
            Length = new Length(length, moves, length is null ? 1 : 4),
        };
    }
}
