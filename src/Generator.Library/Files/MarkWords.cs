using Generator.Domain;
using Generator.Library.Reading;

namespace Generator.Library.Files;

/// <summary>Reads the column <c>to</c>: the mark to which a travel move leads.</summary>
internal static class MarkWords
{
    /// <summary>The name of the column.</summary>
    public const string To = "to";

    /// <summary>Number of the mark, or null; what is wrong is told.</summary>
    /// <param name="row">The row.</param>
    /// <param name="technique">The technique of the row; null where it is open or unknown.</param>
    /// <param name="marks">The marks of the brief.</param>
    public static int? Of(RoutineRow row, Technique? technique, IReadOnlyList<HeroMark> marks)
    {
        var names = marks.Select(m => m.Name).ToList();
        if (row.Text(To) is not { } word)
        {
            if (technique is { Travel: not null })
            {
                row.Refuse(To, $"{technique.Id} goes to another mark, and the row does not say to which.", names.Count > 0 ? NearestWords.OneOf(names) : Lacking);
            }

            return null;
        }

        if (names.Count < 2)
        {
            row.Refuse(To, names.Count == 0 ? "The brief names no marks to go to." : "The brief names one mark only, and the hero stands on it.", Lacking);
            return null;
        }

        if (technique is { Travel: null })
        {
            row.Refuse(To, $"{technique.Id} ends on the mark on which it began.", "Maybe a travel move is meant, such as backs-away or dashes-across; else leave \"to\" out.");
            return null;
        }

        var found = names.FindIndex(n => string.Equals(n, word, StringComparison.OrdinalIgnoreCase));
        if (found < 0)
        {
            row.Refuse(To, $"No mark is called {FieldText.Quote(word)}.", NearestWords.Maybe(word, names, NearestWords.OneOf(names)));
        }

        return found < 0 ? null : found;
    }

    private const string Lacking = "Maybe the brief lacks \"marks\": [ { \"name\": \"door\", \"x\": 2, \"y\": 3 }, … ].";
}
