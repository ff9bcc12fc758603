using System.Globalization;
using Generator.Domain;
using Generator.Paperwork.Text;
using Ical.Net.CalendarComponents;
using Ical.Net.DataTypes;
using Ical.Net.Serialization;

namespace Generator.Paperwork.Teaching;

/// <summary>
/// The rehearsal days as a calendar file (iCalendar, RFC 5545): one event a day, all day long, for hours belong to the company. Nothing in it
/// depends on when it was written. A later version of the routine keeps the identity of every day, so that a calendar changes what it has instead of
/// adding to it: what differs gets the next SEQUENCE, and a day that is no more is cancelled.
/// </summary>
public static class RehearsalCalendar
{
    private const string DayMark = "-day-";

    /// <summary>The text of an <c>.ics</c> file.</summary>
    /// <param name="head">Title and version of the routine.</param>
    /// <param name="pulse">How fast the counts of the routine go by.</param>
    /// <param name="plan">The teaching plan.</param>
    /// <param name="from">Date of the first day.</param>
    /// <param name="before">The calendar of the version before; null for a first one, or when it cannot be read.</param>
    public static string Of(PaperHead head, Pulse pulse, TeachingPlan plan, DateOnly from, string? before = null)
    {
        var old = Read(before);
        var identity = old.Keys.Select(k => k[..k.IndexOf(DayMark, StringComparison.Ordinal)]).FirstOrDefault() ?? RoutineHash.OfText(head.Title)[..16];
        var calendar = new Ical.Net.Calendar { ProductId = "-//Generator//Rehearsals//EN" };
        foreach (var (day, date) in plan.Days.Zip(RehearsalDates.Of(from, plan.Days.Count)))
        {
            var entry = new CalendarEvent
            {
                Uid = string.Create(CultureInfo.InvariantCulture, $"{identity}{DayMark}{day.Number}@generator.invalid"),
                Start = new CalDateTime(date),
                End = new CalDateTime(date.AddDays(1)),
                Summary = $"{(head.Warning is null ? string.Empty : $"{PaperHead.Sign} {PaperHead.Forbidden}: ")}{head.Title}: day {Words.Number(day.Number)}, {day.Aim}",
                Description = string.Join('\n', [.. head.Warning is null ? [] : new[] { head.Warning }, .. day.Drills.Select(d => Line(pulse, d)), day.MotionText, head.Identity, Cautions.Sheet]),
            };
            calendar.Events.Add(Revised(entry, old.GetValueOrDefault(entry.Uid), from));
            old.Remove(entry.Uid);
        }

        foreach (var gone in old.Values)
        {
            var wasGone = string.Equals(gone.Status, "CANCELLED", StringComparison.Ordinal);
            calendar.Events.Add(Stamped(
                new CalendarEvent { Uid = gone.Uid, Start = gone.Start, End = gone.End, Summary = gone.Summary, Description = gone.Description, Status = "CANCELLED" },
                wasGone ? gone.Sequence : gone.Sequence + 1,
                from));
        }

        return new CalendarSerializer().SerializeToString(calendar) ?? throw new InvalidOperationException("The calendar came out empty.");
    }

    private static CalendarEvent Revised(CalendarEvent entry, CalendarEvent? old, DateOnly from)
    {
        var same = old is not null && Equals(old.Start, entry.Start) && string.Equals(old.Summary, entry.Summary, StringComparison.Ordinal)
            && string.Equals(old.Description, entry.Description, StringComparison.Ordinal) && string.IsNullOrEmpty(old.Status);
        return Stamped(entry, old is null ? 0 : same ? old.Sequence : old.Sequence + 1, from);
    }

    /// <summary>A later version has a later stamp, a minute for each.</summary>
    private static CalendarEvent Stamped(CalendarEvent entry, int sequence, DateOnly from)
    {
        entry.Sequence = sequence;
        entry.DtStamp = new CalDateTime(from.ToDateTime(TimeOnly.MinValue).AddMinutes(sequence), CalDateTime.UtcTzId);
        return entry;
    }

    /// <summary>Our own events of the calendar before, by their identity.</summary>
    private static Dictionary<string, CalendarEvent> Read(string? text)
    {
        var events = new Dictionary<string, CalendarEvent>(StringComparer.Ordinal);
        if (text is null)
        {
            return events;
        }

        try
        {
            foreach (var entry in Ical.Net.Calendar.Load(text)?.Events.Where(e => e.Uid?.Contains(DayMark, StringComparison.Ordinal) == true) ?? [])
            {
                events[entry.Uid!] = entry;
            }
        }
        catch (Exception error) when (error is ArgumentException or FormatException or InvalidOperationException or System.Runtime.Serialization.SerializationException)
        {
            // Somebody else's file of that name: a first version is written.
            events.Clear();
        }

        return events;
    }

    private static string Line(Pulse pulse, Drill drill)
    {
        var repeats = drill.Repeats == 0 ? "marked only" : Words.Many(drill.Repeats, "time");
        return $"{drill.What}, {drill.Speed} speed (metronome {drill.Speed.MetronomeOf(pulse)}), {repeats}";
    }
}
