using System.Globalization;
using Generator.Paperwork.Text;

namespace Generator.Paperwork.Teaching;

/// <summary>The rehearsal days as a strip, a row for each week, each day with its minutes in motion; five days in a row where no date was given.</summary>
internal static class DayStrip
{
    private const int DaysInARow = 5, Head = 16, Cell = 10;

    public static IEnumerable<Block> Of(IReadOnlyList<RehearsalDay> days, IReadOnlyList<DateOnly>? dates)
    {
        var placed = days.Select((d, i) => dates is null ? new Placed(d, i / DaysInARow, i % DaysInARow, null) : new Placed(d, WeekOf(dates[i]), Weekday(dates[i]), dates[i]));
        foreach (var week in placed.GroupBy(p => p.Row))
        {
            yield return Block.Gap;
            if (week.First().Date is { } date)
            {
                yield return Line("week " + RehearsalDates.WeekOf(date), week, p => p.Date!.Value.ToString("ddd d MMM", CultureInfo.InvariantCulture));
            }

            yield return Line(string.Empty, week, p => "day " + Words.Number(p.Day.Number));
            yield return Line("in motion", week, p => p.Day.Minutes + " min");
        }
    }

    /// <summary>Weeks since the first Monday that there is.</summary>
    private static int WeekOf(DateOnly date) => date.DayNumber / 7;

    /// <summary>0 for Monday.</summary>
    private static int Weekday(DateOnly date) => date.DayNumber % 7;

    private static Block Line(string head, IEnumerable<Placed> week, Func<Placed, string> of)
    {
        var cells = Enumerable.Repeat(string.Empty, DaysInARow).ToArray();
        foreach (var placed in week)
        {
            cells[placed.Column] = of(placed);
        }

        return Block.Row([(head, Head), .. cells.Select(c => (c, Cell))]);
    }

    private readonly record struct Placed(RehearsalDay Day, int Row, int Column, DateOnly? Date);
}
