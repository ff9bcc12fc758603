using Generator.Domain;
using Generator.Paperwork.SafetyPapers;
using Generator.Rules.Judging;
using Newtonsoft.Json.Linq;

namespace Generator.Paperwork.Tests.SafetyPapers;

public class ChangeLogTests
{
    private static readonly string First = Next(Ferry.Routine, null);

    private static readonly string Signed = Sign(First);

    private static string Next(Routine routine, string? before, DateOnly? from = null) =>
        ChangeLog.Next(routine, before, PaperHead.Of(routine, new Verdict([], 0, []), from));

    [Fact]
    public void A_first_log_names_everybody_and_nobody_has_signed()
    {
        Assert.False(ChangeLog.IsSigned(First));
        Assert.Equal(["", "", "", "", "Ines", "Bruno", "Wanda", "Piet"], JObject.Parse(First)["signOffs"]!.Select(s => (string?)s["who"]));
        Assert.Equal(RoutineHash.Of(Ferry.Routine), (string?)JObject.Parse(First)["routine"]);
    }

    [Fact]
    public void The_same_routine_keeps_the_sign_offs_and_the_bytes()
    {
        Assert.Equal(First, Next(Ferry.Routine, First));
        var again = Next(Ferry.Routine, Signed);
        Assert.True(ChangeLog.IsSigned(again));
        Assert.Equal(again, Next(Ferry.Routine, again));
    }

    [Fact]
    public void Another_date_changes_nothing_but_the_date()
    {
        var dated = Next(Ferry.Routine, Signed, new DateOnly(2027, 3, 15));
        Assert.Equal("2027-03-15", (string?)JObject.Parse(dated)["from"]);
        Assert.Equal(Signed, Next(Ferry.Routine, dated));
    }

    public static TheoryData<string, string> Changes() => new()
    {
        { "note", "new or changed: move 3" },
        { "count", "new or changed: move 25" },
        { "dropped", "no longer there: move 2 of the version before" },
        { "added", "new or changed: move 1" },
        { "height", "the brief has changed" },
        { "title", "the brief has changed" },
        { "library", "the library has changed" },
        { "place", "opening places have changed" },
    };

    [Theory]
    [MemberData(nameof(Changes))]
    public void Any_change_clears_the_sign_offs_and_is_told(string change, string told)
    {
        var next = Next(Changed(change), Signed);
        Assert.False(ChangeLog.IsSigned(next));
        var last = JObject.Parse(next)["changes"]!.Last!;
        Assert.Equal(2, (int)last["number"]!);
        Assert.Contains(told, last["what"]!.Select(w => (string)w!));
        Assert.Equal("A. Nyone", (string?)last["clearedSignOffs"]!.Single()["name"]);
        var back = Next(Ferry.Routine, next);
        Assert.False(ChangeLog.IsSigned(back));
        Assert.Equal(3, JObject.Parse(back)["changes"]!.Count());
    }

    [Theory]
    [InlineData("")]
    [InlineData("[]")]
    [InlineData("{ \"routine\": \"x\" }")]
    [InlineData("{ \"routine\": \"x\", \"routine\": \"y\" }")]
    [InlineData("{ \"routine\": \"x\", \"signOffs\": [ 3 ], \"changes\": [], \"fingerprints\": { \"moves\": [] } }")]
    [InlineData("{ \"routine\": \"x\", \"signOffs\": [ { \"name\": 3 } ], \"changes\": [], \"fingerprints\": { \"moves\": [] } }")]
    [InlineData("{ \"routine\": ")]
    public void What_is_no_change_log_is_refused(string text) => Assert.Throws<ChangeLogException>(() => Next(Ferry.Routine, text));

    [Fact]
    public void A_date_that_somebody_wrote_stays_as_written() =>
        Assert.Contains("\"date\": \"2027-03-15T10:00:00Z\"", Next(Ferry.Routine, Signed), StringComparison.Ordinal);

    [Theory]
    [InlineData("abc", "abc", "", "")]
    [InlineData("abc", "axc", "2", "2")]
    [InlineData("abc", "ac", "2", "")]
    [InlineData("abc", "zabc", "", "1")]
    [InlineData("", "ab", "", "1 2")]
    [InlineData("ab", "ba", "1", "2")]
    public void Moves_that_two_versions_do_not_share(string before, string now, string gone, string added)
    {
        var changes = MoveChanges.Of([.. before.Select(c => $"{c}")], [.. now.Select(c => $"{c}")]);
        Assert.Equal((gone, added), (string.Join(' ', changes.Gone), string.Join(' ', changes.Added)));
    }

    private static Routine Changed(string change)
    {
        var routine = Ferry.Routine;
        return change switch
        {
            "note" => Move(2, m => m with { Note = "slower" }),
            "count" => Move(24, m => m with { Start = new HalfCounts(m.Start.Value + 1) }),
            "dropped" => routine with { Moves = [.. routine.Moves.Where((_, i) => i != 1)] },
            "added" => routine with { Moves = [new Move { Start = new HalfCounts(-6), Technique = "look-about-right" }, .. routine.Moves] },
            "height" => routine with { Brief = routine.Brief with { Hero = routine.Brief.Hero with { Height = new Centimetres(170) } } },
            "title" => routine with { Brief = routine.Brief with { Title = "Day ferry" } },
            "library" => routine with { LibraryVersion = "another" },
            _ => routine with { Placements = [routine.Placements[0] with { Distance = new Centimetres(399) }, .. routine.Placements.Skip(1)] },
        };
    }

    private static Routine Move(int index, Func<Move, Move> change) =>
        Ferry.Routine with { Moves = [.. Ferry.Routine.Moves.Select((m, i) => i == index ? change(m) : m)] };

    private static string Sign(string log) => log.Replace(
        "{ \"role\": \"fight captain\", \"who\": \"\", \"name\": \"\", \"date\": \"\" }",
        "{ \"role\": \"fight captain\", \"who\": \"\", \"name\": \"A. Nyone\", \"date\": \"2027-03-15T10:00:00Z\" }",
        StringComparison.Ordinal);
}
