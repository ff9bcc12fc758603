using System.CommandLine;
using System.Globalization;
using Generator.Domain;
using Generator.Library.Reading;

namespace Generator.Cli.Options;

/// <summary>Moves that are to stay: "5", "5-7", "5-7@20-28", "5-7@anywhere"; numbers as an audit says them, from 1.</summary>
/// <param name="First">From 1.</param>
/// <param name="Last">From 1.</param>
/// <param name="Earliest">They start no earlier; null for no limit.</param>
/// <param name="Latest">They start no later; null for no limit.</param>
/// <param name="AtTheirCount">They start at the count at which they are.</param>
internal sealed record MoveRange(int First, int Last, HalfCounts? Earliest, HalfCounts? Latest, bool AtTheirCount)
{
    private const string Anywhere = "anywhere";

    /// <summary>An option that may be given several times.</summary>
    /// <param name="description">What the moves are kept for.</param>
    /// <param name="counts">Counts may follow an @.</param>
    public static Option<MoveRange[]> Option(string description, bool counts) => new("--keep")
    {
        HelpName = "MOVES",
        Description = description,
        AllowMultipleArgumentsPerToken = false,
        CustomParser = result =>
        {
            var ranges = new List<MoveRange>();
            foreach (var token in result.Tokens)
            {
                if (Parse(token.Value, counts) is not { } range)
                {
                    result.AddError($"--keep {FieldText.Shorten(token.Value)} does not say which moves.\nMaybe write --keep 5, or --keep 5-7 for a run of moves{(counts ? ", and where they may start: --keep 5@20-28 or --keep 5@anywhere" : string.Empty)}.");
                    return [];
                }

                ranges.Add(range);
            }

            return [.. ranges];
        },
    };

    /// <summary>Refuses moves that a routine does not have.</summary>
    /// <exception cref="RefusedException">There are no such moves, or one of them has no technique.</exception>
    public MoveRange In(Routine routine)
    {
        if (Last > routine.Moves.Count)
        {
            throw new RefusedException($"--keep {this}: the routine has {routine.Moves.Count.ToString(CultureInfo.InvariantCulture)} moves.", "Maybe count them in an audit or on the wall sheet.");
        }

        if (routine.Moves.Skip(First - 1).Take(Last - First + 1).Any(m => m.Technique is null))
        {
            throw new RefusedException($"--keep {this}: an attack that nothing answers cannot be kept.", "Maybe leave it out.");
        }

        return this;
    }

    public override string ToString() => First == Last
        ? First.ToString(CultureInfo.InvariantCulture)
        : string.Create(CultureInfo.InvariantCulture, $"{First}-{Last}");

    private static MoveRange? Parse(string text, bool counts)
    {
        var halves = text.Split('@');
        var (first, last) = Pair(halves[0]);
        if (halves.Length > (counts ? 2 : 1) || !Number(first, out var from) || !Number(last, out var to) || to < from)
        {
            return null;
        }

        if (halves.Length == 1)
        {
            return new MoveRange(from, to, null, null, AtTheirCount: true);
        }

        if (string.Equals(halves[1], Anywhere, StringComparison.OrdinalIgnoreCase))
        {
            return new MoveRange(from, to, null, null, AtTheirCount: false);
        }

        var (early, late) = Pair(halves[1]);
        return HalfCounts.TryParseCount(early, out var earliest) && HalfCounts.TryParseCount(late, out var latest) && earliest <= latest
            ? new MoveRange(from, to, earliest, latest, AtTheirCount: false)
            : null;
    }

    private static (string First, string Last) Pair(string text)
    {
        var dash = text.IndexOf('-', StringComparison.Ordinal);
        return dash < 0 ? (text, text) : (text[..dash], text[(dash + 1)..]);
    }

    private static bool Number(string text, out int number) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out number) && number >= 1;
}
