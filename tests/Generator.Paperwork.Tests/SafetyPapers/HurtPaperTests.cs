using Generator.Domain;
using Generator.Library.Files;
using Generator.Library.Reading;
using Generator.Paperwork.HandOffs;
using Generator.Paperwork.Html;
using Generator.Paperwork.SafetyPapers;
using Generator.Paperwork.Text;
using Generator.Paperwork.Tracks;
using Generator.Rules;
using Generator.Rules.Judging;

namespace Generator.Paperwork.Tests.SafetyPapers;

/// <summary>Zora plays a hurt knee and Bruno a hurt arm: every paper from which somebody works says so, with the same counts, and says nothing of it where nobody is hurt.</summary>
public sealed class HurtPaperTests
{
    private const string Fight = """
        {
          "brief": { "title": "Two hurts", "hero": { "name": "Zora", "skill": "stunt" }, "attackers": [ { "name": "Bruno", "skill": "stunt" } ] },
          "attackers": [ { "name": "Bruno", "bearing": "12", "distance": 2 } ],
          "moves": [
            { "count": 2, "attacker": "Bruno", "attack": "cross-right", "technique": "takes-face-hit", "reaction": "presses-on", "hurts": "left-knee until 12" },
            { "count": 7, "attacker": "Bruno", "attack": "cross-right", "technique": "rising-block-left", "reaction": "limb-swept-out" },
            { "count": 8, "attacker": "Bruno", "technique": "knee-right", "reaction": "folds", "hurts": "right-arm until 20&" }
          ]
        }
        """;

    private static readonly PaperSource Source = Read(Fight);

    private static readonly PaperSource Sound = Read(Fight.Replace(", \"hurts\": \"left-knee until 12\"", string.Empty, StringComparison.Ordinal).Replace(", \"hurts\": \"right-arm until 20&\"", string.Empty, StringComparison.Ordinal));

    private static string Knee => $"a hurt left knee from {Words.AtCount(Source.Steps[0].End)} until count 12";

    private static string Arm => $"a hurt right arm from {Words.AtCount(Source.Steps[2].End)} until count 20&";

    public static TheoryData<string> Papers => ["wall", "risk", "call"];

    [Theory]
    [MemberData(nameof(Papers))]
    public void Sheets_say_who_plays_what_from_when_until_when(string paper)
    {
        var text = Flat(Text(paper, Source));
        Assert.Contains(Knee, text, StringComparison.Ordinal);
        Assert.Contains(Arm, text, StringComparison.Ordinal);
        Assert.DoesNotContain("a hurt ", Flat(Text(paper, Sound)), StringComparison.Ordinal);
    }

    [Fact]
    public void Parts_say_it_to_whom_it_concerns()
    {
        Assert.Equal(["play " + Knee + ": nothing with it or on it"], Hurts(Source, -1));
        Assert.Equal(["play " + Arm + ": nothing with it or on it"], Hurts(Source, 0));
        Assert.Empty(Hurts(Sound, -1));
    }

    /// <summary>A jagged line runs under the track of whoever plays it for as long as they do, and a picture of tracks says so in words; without hurts neither is there.</summary>
    [Fact]
    public void Tracks_draw_it_from_when_until_when()
    {
        var view = new RoutineView(Source);
        var line = view.WideTracks[0];
        var knee = Assert.Single(line.Rows[0].Hurts);
        Assert.Equal((line.Names + ((Source.Steps[0].End - line.From) * TrackScore.Half), (Math.Min(22, view.Course.To) - Source.Steps[0].End) * TrackScore.Half), (knee.X, knee.Width));
        Assert.Equal("plays " + Knee, knee.Told);
        Assert.Equal(["plays " + Arm], view.WideTracks.SelectMany(l => l.Rows[1].Hurts).Select(h => h.Told).Distinct());
        var (page, sound) = (RoutinePaper.Of(view), RoutinePaper.Of(new RoutineView(Sound)));
        Assert.Contains("; plays " + Knee, page, StringComparison.Ordinal);
        Assert.Contains("plays a hurt part of the body", page, StringComparison.Ordinal);
        Assert.DoesNotContain("class=\"jagged\"", sound, StringComparison.Ordinal);
    }

    [Fact]
    public void The_cue_list_calls_it_when_it_begins()
    {
        var cues = CueList.Of(Source.Scene, Source.Routine, Source.Steps, Source.Phrases).Where(c => c.Kind == "hurt").ToList();
        Assert.Equal([(Source.Steps[0].End, "Zora", "left knee, until count 12", 1), (Source.Steps[2].End, "Bruno", "right arm, until count 20&", 3)], cues.Select(c => (c.Moment, c.Who, c.What, c.Move)));
    }

    [Fact]
    public void Tables_hold_it_where_there_is_any()
    {
        var tracks = TrackTable.Of(Source.Scene, Source.Routine, Source.Steps).ToCsv();
        Assert.Contains("Zora,", tracks.Split("\r\n").Single(l => l.Contains("plays a hurt left knee", StringComparison.Ordinal)), StringComparison.Ordinal);
        Assert.Contains("Bruno,", tracks.Split("\r\n").Single(l => l.Contains("plays a hurt right arm", StringComparison.Ordinal)), StringComparison.Ordinal);
        var moves = MoveTable.Of(Source.Scene, Source.Routine, Source.Steps, Source.Phrases).ToCsv();
        Assert.Contains("left-knee until 12,Zora", moves, StringComparison.Ordinal);
        Assert.Contains("right-arm until 20&,Bruno", moves, StringComparison.Ordinal);
        Assert.DoesNotContain("hurts", MoveTable.Of(Sound.Scene, Sound.Routine, Sound.Steps, Sound.Phrases).ToCsv(), StringComparison.Ordinal);
    }

    private static string Text(string paper, PaperSource source) => paper switch
    {
        "wall" => WallSheet.Of(source.Scene, source.Routine, Audit.Of(source.Scene, source.Routine), source.Steps, null),
        "risk" => RiskSheet.Of(source, Hazards.Of(source)),
        _ => FightCallSheet.Of(source, Hazards.Of(source)),
    };

    private static IReadOnlyList<string> Hurts(PaperSource source, int who) =>
        [.. new PartView(new RoutineView(source), who).Moves.SelectMany(m => m.Lines).Where(l => l.Label == "Hurt").Select(l => l.Text)];

    private static string Flat(string text) => string.Join(' ', text.Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries));

    private static PaperSource Read(string text)
    {
        var read = RoutineReader.Parse(new SourceFile("x.routine.json", text), Ferry.Book);
        Assert.True(read.IsGood, read.ToText());
        return PaperSource.Of(new Scene(read.Value.Brief, Ferry.Book), read.Value);
    }
}
