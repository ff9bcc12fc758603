using System.Globalization;

namespace Generator.Paperwork.Teaching;

/// <summary>On which dates the rehearsal days fall: the first on the given date, Saturdays and Sundays left out.</summary>
public static class RehearsalDates
{
    public static IReadOnlyList<DateOnly> Of(DateOnly from, int days)
    {
        var dates = new List<DateOnly>(days);
        for (var date = from; dates.Count < days; date = date.AddDays(1))
        {
            if (date.DayOfWeek is not (DayOfWeek.Saturday or DayOfWeek.Sunday))
            {
                dates.Add(date);
            }
        }

        return dates;
    }

    /// <summary>"Mon 7 Dec 2026, week 2026-W50": with the week of ISO 8601, whose year may be another at its turn.</summary>
    public static string Label(DateOnly date) => $"{date.ToString("ddd d MMM yyyy", CultureInfo.InvariantCulture)}, week {WeekOf(date)}";

    /// <summary>"2026-W53".</summary>
    public static string WeekOf(DateOnly date)
    {
        var day = date.ToDateTime(TimeOnly.MinValue);
        return string.Create(CultureInfo.InvariantCulture, $"{ISOWeek.GetYear(day):0000}-W{ISOWeek.GetWeekOfYear(day):00}");
    }
}
