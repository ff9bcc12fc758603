using System.Text;
using Generator.Domain;
using Generator.Library;
using Generator.Library.Files;
using Generator.Library.Loading;
using Generator.Paperwork;
using Generator.Paperwork.Teaching;
using Generator.Rules;
using Generator.Rules.Judging;
using Generator.Rules.Replaying;

namespace Generator.Outside.Tests;

/// <summary>The calendar file against RFC 5545 and ISO 8601, read by a reader of its own.</summary>
public class CalendarTests
{
    internal const string Title = "Nachtfähre; Öl, Wasser\\Eis — ein Titel, der länger ist als eine Zeile von fünfundsiebzig Oktetten, ≈ 小さな船 小さな船 小さな船";

    internal const string Warned = "▲! Not to be performed like this: ";

    private static readonly string Text = Write(Title);

    private static readonly string[] Lines = Unfold(Text);

    [Fact(DisplayName = "RFC 5545 section 3.1: lines end with CR LF, hold at most 75 octets, and no letter is cut")]
    public void Lines_end_with_cr_lf_and_hold_at_most_75_octets()
    {
        Assert.EndsWith("\r\n", Text, StringComparison.Ordinal);
        var raw = Text.Split("\r\n");
        Assert.All(raw, l => Assert.DoesNotContain(l, c => c is '\r' or '\n'));
        Assert.All(raw, l => Assert.InRange(Encoding.UTF8.GetByteCount(l), 0, 75));
        Assert.Contains(raw, l => l.StartsWith(' '));
        Assert.All(raw, l => Assert.Equal(l, new UTF8Encoding(false, true).GetString(Encoding.UTF8.GetBytes(l))));
    }

    [Fact(DisplayName = "RFC 5545 section 3.6.1: every event has UID and DTSTAMP, and DTEND is exclusive")]
    public void Each_event_has_uid_and_stamp_and_its_end_is_exclusive()
    {
        var events = Values("BEGIN").Count(v => v == "VEVENT");
        Assert.True(events >= 4, $"{events}");
        Assert.Equal(events, Values("UID").Distinct().Count());
        Assert.Equal(Enumerable.Repeat("20261230T000000Z", events), Values("DTSTAMP"));
        Assert.Equal(["20261230", "20261231", "20270101", "20270104"], Values("DTSTART").Take(4));
        Assert.Equal(["20261231", "20270101", "20270102", "20270105"], Values("DTEND").Take(4));
        Assert.All(Lines.Where(l => l.StartsWith("DTSTART", StringComparison.Ordinal) || l.StartsWith("DTEND", StringComparison.Ordinal)), l => Assert.Contains(";VALUE=DATE:", l, StringComparison.Ordinal));
    }

    [Fact(DisplayName = "RFC 5545 section 3.3.11: backslash, semicolon, comma and line feed come back")]
    public void Text_comes_back_as_it_went_in()
    {
        // The routine is unsafe, and the first words of every day say so.
        Assert.All(Values("SUMMARY"), s => Assert.StartsWith($"{Warned}{Title}: day ", Unescape(s), StringComparison.Ordinal));
        Assert.All(Values("DESCRIPTION"), d => Assert.Contains("\nFor trained performers", Unescape(d), StringComparison.Ordinal));
        Assert.Contains("Nachtfähre\\; Öl\\, Wasser\\\\Eis", Values("SUMMARY").First(), StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_plan_gives_the_same_file_and_another_routine_other_identities()
    {
        Assert.Equal(Text, Write(Title));
        Assert.Empty(Values("UID").Intersect(Unfold(Write("Another")).Where(l => l.StartsWith("UID:", StringComparison.Ordinal)).Select(l => l[4..])));
    }

    [Theory(DisplayName = "RFC 5545 sections 3.8.4.7 and 3.8.7.4: over revisions a day keeps its UID, its SEQUENCE rises, and a day that is no more is cancelled")]
    [InlineData(Title, 12)]
    [InlineData("Another title", 12)]
    [InlineData(Title, 3)]
    public void Days_keep_their_identity_over_revisions(string title, int moves)
    {
        var next = Write(title, moves, Text);
        var (was, now) = (Unfold(Text), Unfold(next));
        var old = Of(was, "UID").Zip(Of(was, "SEQUENCE")).ToDictionary();
        var later = Of(now, "UID").Zip(Of(now, "SEQUENCE")).ToDictionary();
        Assert.True(old.Count >= 4);
        Assert.All(old, day => Assert.Equal("0", day.Value));
        Assert.All(old.Keys, day => Assert.Equal("1", later[day]));
        Assert.All(later.Keys.Except(old.Keys), day => Assert.Equal("0", later[day]));
        Assert.Equal(Math.Max(0, old.Count - DaysOf(title, moves)), Of(now, "STATUS").Count(v => v == "CANCELLED"));

        // The same version again changes nothing, and a third one counts on.
        Assert.Equal(next, Write(title, moves, next));
        Assert.All(Of(Unfold(Write("A third", 9, next)), "SEQUENCE").Take(old.Count), s => Assert.Equal("2", s));
    }

    [Fact]
    public void A_file_that_is_no_calendar_begins_a_first_version() => Assert.Equal(Text, Write(Title, 9, "no calendar"));

    private static int DaysOf(string title, int moves) => Of(Unfold(Write(title, moves)), "UID").Count();

    private static IEnumerable<string> Of(string[] lines, string name) => lines.Where(l => l.StartsWith(name + ":", StringComparison.Ordinal)).Select(l => l[(name.Length + 1)..]);

    [Theory(DisplayName = "ISO 8601: a week belongs to the year of its Thursday")]
    [InlineData(2024, 12, 30, "2025-W01")]
    [InlineData(2026, 12, 31, "2026-W53")]
    [InlineData(2027, 1, 3, "2026-W53")]
    [InlineData(2027, 1, 4, "2027-W01")]
    public void Weeks_at_the_turn_of_the_year(int year, int month, int day, string week) => Assert.Equal(week, RehearsalDates.WeekOf(new DateOnly(year, month, day)));

    [Fact]
    public void Nobody_rehearses_at_the_weekend()
    {
        var dates = RehearsalDates.Of(new DateOnly(2026, 12, 5), 12);
        Assert.Equal(new DateOnly(2026, 12, 7), dates[0]);
        Assert.Equal(12, dates.Distinct().Count());
        Assert.All(dates, d => Assert.True(d.DayOfWeek is not (DayOfWeek.Saturday or DayOfWeek.Sunday)));
    }

    /// <summary>The calendar of a long plan over the turn of the year.</summary>
    internal static string Write(string title, int moves = 9, string? before = null)
    {
        var book = LibraryLoader.LoadBundled([]).Value!;
        var routine = new Routine
        {
            Brief = BundledScenario.Brief(book) with { Title = title },
            Placements = [.. Enumerable.Range(0, 3).Select(i => new Placement(new Bearing(i * 8), new Centimetres(300), HalfCounts.Zero))],
            Moves = [.. Enumerable.Range(0, moves).Select(i => new Move { Start = HalfCounts.FromCounts(4 * i), Attacker = i % 3, Attack = "swing-right", Technique = "outside-block-left", Reaction = "limb-stopped" })],
        };
        var scene = new Scene(routine.Brief, book);
        var steps = Replay.Of(scene, routine);
        var head = PaperHead.Of(routine, Audit.Of(scene, routine));
        return RehearsalCalendar.Of(head, routine.Brief.Tempo, TeachingPlan.Of(scene, steps, PhraseCut.Of(steps)), new DateOnly(2026, 12, 30), before);
    }

    private static string[] Unfold(string text) => text.Replace("\r\n ", string.Empty, StringComparison.Ordinal).Replace("\r\n\t", string.Empty, StringComparison.Ordinal).Split("\r\n");

    private static IEnumerable<string> Values(string name) =>
        Lines.Where(l => l.StartsWith(name + ":", StringComparison.Ordinal) || l.StartsWith(name + ";", StringComparison.Ordinal)).Select(l => l[(l.IndexOf(':', StringComparison.Ordinal) + 1)..]);

    private static string Unescape(string text)
    {
        var plain = new StringBuilder();
        for (var i = 0; i < text.Length; i++)
        {
            plain.Append(text[i] != '\\' ? text[i] : text[++i] is 'n' or 'N' ? '\n' : text[i]);
        }

        return plain.ToString();
    }
}
