using System.Text;
using Newtonsoft.Json;
using Newtonsoft.Json.Linq;

namespace Generator.Outside.Tests;

/// <summary>The calendar file read by another program: the icalendar package of Python, which had no part in writing it.</summary>
public class CalendarReadBackTests
{
    private const string Script = """
        import icalendar, json, sys
        calendar = icalendar.Calendar.from_ical(open(sys.argv[1], 'rb').read())
        print(json.dumps({
            'product': str(calendar['PRODID']), 'version': str(calendar['VERSION']), 'errors': [str(e) for c in calendar.walk() for e in c.errors],
            'events': [{
                'uid': str(e['UID']), 'sequence': int(e['SEQUENCE']), 'status': str(e.get('STATUS', '')), 'stamp': e.decoded('DTSTAMP').isoformat(), 'start': e.decoded('DTSTART').isoformat(), 'end': e.decoded('DTEND').isoformat(),
                'summary': str(e['SUMMARY']), 'description': str(e['DESCRIPTION'])} for e in calendar.walk('VEVENT')]}))
        """;

    [PythonFact("icalendar", DisplayName = "iCalendar: Python's icalendar reads every day with its dates, and the texts as they went in")]
    public void Another_program_reads_the_calendar()
    {
        var events = Events(CalendarTests.Write(CalendarTests.Title));
        Assert.True(events.Count >= 4, $"{events.Count}");
        Assert.Equal(events.Count, events.Select(e => (string?)e["uid"]).Distinct().Count());
        Assert.Equal(["2026-12-30", "2026-12-31", "2027-01-01", "2027-01-04"], events.Take(4).Select(e => (string?)e["start"]));
        Assert.All(events, e => Assert.Equal(DateOnly.Parse((string)e["start"]!, null).AddDays(1), DateOnly.Parse((string)e["end"]!, null)));
        Assert.All(events, e => Assert.Equal("2026-12-30T00:00:00+00:00", (string?)e["stamp"]));
        Assert.All(events, (e, i) => Assert.StartsWith($"{CalendarTests.Warned}{CalendarTests.Title}: day {i + 1}, ", (string?)e["summary"], StringComparison.Ordinal));
        Assert.All(events, e => Assert.Contains("\nFor trained performers under a qualified fight coordinator.", (string?)e["description"], StringComparison.Ordinal));
    }

    [PythonFact("icalendar", DisplayName = "iCalendar: Python's icalendar reads three versions of a routine as the same days, each later than the one before, and those that are no more as cancelled")]
    public void Another_program_knows_the_days_again_over_revisions()
    {
        var first = CalendarTests.Write(CalendarTests.Title, 12);
        var second = CalendarTests.Write(CalendarTests.Title, 0, first);
        var third = CalendarTests.Write("The same fight by another name", 12, second);
        var versions = new[] { first, second, third }.Select(Events).ToList();
        var days = versions[0].Select(e => (string?)e["uid"]).ToList();
        Assert.True(days.Count >= 4);
        for (var version = 0; version < versions.Count; version++)
        {
            Assert.Equal(days, versions[version].Select(e => (string?)e["uid"]));
            Assert.All(versions[version], e => Assert.Equal(version, (int)e["sequence"]!));
            Assert.All(versions[version], e => Assert.Equal($"2026-12-30T00:0{version}:00+00:00", (string?)e["stamp"]));
        }

        Assert.All(versions[0].Concat(versions[2]), e => Assert.Equal(string.Empty, (string?)e["status"]));
        Assert.Equal(days.Count - Events(CalendarTests.Write(CalendarTests.Title, 0)).Count, versions[1].Count(e => (string?)e["status"] == "CANCELLED"));
        Assert.Contains(versions[1], e => (string?)e["status"] == "CANCELLED");
    }

    /// <summary>The days that the other program reads in a calendar without a fault.</summary>
    private static List<JToken> Events(string calendar)
    {
        using var reader = new JsonTextReader(new StringReader(Python.Reads("icalendar", Script, Encoding.UTF8.GetBytes(calendar)))) { DateParseHandling = DateParseHandling.None };
        var read = JObject.Load(reader);
        Assert.Equal(("-//Generator//Rehearsals//EN", "2.0"), ((string?)read["product"], (string?)read["version"]));
        Assert.Empty(read["errors"]!);
        return [.. read["events"]!];
    }
}
