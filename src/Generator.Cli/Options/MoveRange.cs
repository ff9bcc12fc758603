using System.CommandLine;
using System.Globalization;
using Generator.Domain;
using Generator.Library.Reading;

namespace Generator.Cli.Options;

/// <summary>Moves that are to stay: "5", "5-7", "5-7@+2", "5-7@20-28", "5-7@anywhere"; numbers as an audit says them, from 1.</summary>
/// <param name="First">From 1.</param>
/// <param name="Last">From 1.</param>
/// <param name="Earliest">They start no earlier; null for no limit.</param>
/// <param name="Latest">They start no later; null for no limit.</param>
/// <param name="Slip">Half counts by which each may come sooner (0 or less) and later than it does; null where their counts are not what they go by.</param>
internal sealed record MoveRange(int First, int Last, HalfCounts? Earliest, HalfCounts? Latest, (int Sooner, int Later)? Slip)
{
    private const string Anywhere = "anywhere";

    /// <summary>Counts by which moves may slip at most.</summary>
    private const int MostSlip = 99;

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
                    result.AddError($"--keep {FieldText.Shorten(token.Value)} does not say which moves.\nMaybe write --keep 5, or --keep 5-7 for a run of moves{(counts ? ", and when they may start: --keep 5@+2 for up to two counts later, --keep 5@20-28 or --keep 5@anywhere" : string.Empty)}.");
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
            return new MoveRange(from, to, null, null, (0, 0));
        }

        if (string.Equals(halves[1], Anywhere, StringComparison.OrdinalIgnoreCase))
        {
            return new MoveRange(from, to, null, null, null);
        }

        if (SlipOf(halves[1]) is { } slip)
        {
            return new MoveRange(from, to, null, null, slip);
        }

        var (early, late) = Pair(halves[1]);
        return HalfCounts.TryParseCount(early, out var earliest) && HalfCounts.TryParseCount(late, out var latest) && earliest <= latest
            ? new MoveRange(from, to, earliest, latest, null)
            : null;
    }

    /// <summary>"+2": up to two counts later; "-1+2": up to one sooner and two later.</summary>
    private static (int Sooner, int Later)? SlipOf(string text)
    {
        if (text is not ['+' or '-', ..])
        {
            return null;
        }

        var plus = text.IndexOf('+', StringComparison.Ordinal);
        var (sooner, later) = (0, 0);
        return (plus == 0 || (Number(text[1..(plus < 0 ? text.Length : plus)], out sooner) && sooner <= MostSlip)) && (plus < 0 || (Number(text[(plus + 1)..], out later) && later <= MostSlip))
            ? (-HalfCounts.PerCount * sooner, HalfCounts.PerCount * later) : null;
    }

    private static (string First, string Last) Pair(string text)
    {
        var dash = text.IndexOf('-', StringComparison.Ordinal);
        return dash < 0 ? (text, text) : (text[..dash], text[(dash + 1)..]);
    }

    private static bool Number(string text, out int number) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out number) && number >= 1;
}
