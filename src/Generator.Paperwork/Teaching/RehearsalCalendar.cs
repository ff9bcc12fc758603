using System.Globalization;
using Generator.Domain;
using Generator.Paperwork.Text;
using Ical.Net.CalendarComponents;
using Ical.Net.DataTypes;
using Ical.Net.Serialization;

namespace Generator.Paperwork.Teaching;

/// <summary>
/// The rehearsal days as a calendar file (iCalendar, RFC 5545): one event a day, all day long, for hours belong to the company. Nothing in it
/// depends on when it was written.
/// </summary>
public static class RehearsalCalendar
{
    /// <summary>The text of an <c>.ics</c> file.</summary>
    /// <param name="routine">Gives title, tempo, and the fingerprint in every event's identity.</param>
    /// <param name="plan">The teaching plan.</param>
    /// <param name="from">Date of the first day.</param>
    public static string Of(Routine routine, TeachingPlan plan, DateOnly from)
    {
        var (calendar, hash) = (new Ical.Net.Calendar { ProductId = "-//Generator//Rehearsals//EN" }, RoutineHash.Of(routine));
        var stamp = new CalDateTime(from.Year, from.Month, from.Day, 0, 0, 0, CalDateTime.UtcTzId);
        var title = Page.Clean(routine.Brief.Title);
        foreach (var (day, date) in plan.Days.Zip(RehearsalDates.Of(from, plan.Days.Count)))
        {
            calendar.Events.Add(new CalendarEvent
            {
                Uid = string.Create(CultureInfo.InvariantCulture, $"{hash[..16]}-day-{day.Number}@generator.invalid"),
                DtStamp = stamp,
                Start = new CalDateTime(date),
                End = new CalDateTime(date.AddDays(1)),
                Summary = $"{title}: day {Words.Number(day.Number)}, {day.Aim}",
                Description = string.Join('\n', day.Drills.Select(d => Line(routine.Brief.Tempo, d)).Append(Cautions.Sheet)),
            });
        }

        return new CalendarSerializer().SerializeToString(calendar) ?? throw new InvalidOperationException("The calendar came out empty.");
    }

    private static string Line(Tempo tempo, Drill drill)
    {
        var repeats = drill.Repeats == 0 ? "marked only" : Words.Many(drill.Repeats, "time");
        return $"{drill.What}, {drill.Speed} speed (metronome {drill.Speed.MetronomeOf(tempo)}), {repeats}";
    }
}
