using Generator.Domain;
using Generator.Paperwork.HandOffs;
using Generator.Paperwork.Teaching;
using Generator.Testing;

namespace Generator.Paperwork.Tests.HandOffs;

public class CueListTests
{
    private static readonly IReadOnlyList<CueEntry> Cues = CueList.Of(Ferry.Scene, Ferry.Routine, Ferry.Steps, PhraseCut.Of(Ferry.Steps));

    [Fact]
    public void The_cues_of_the_ferry_at_25() => Golden.Matches("cue-list", Text(FrameRate.TwentyFive));

    [Fact]
    public void Drop_frame_is_written_with_a_semicolon()
    {
        Assert.Contains("Timecode at 29.97 drop-frame", Text(FrameRate.TwentyNineNinetySeven), StringComparison.Ordinal);
        Assert.Contains("  00:00:02;12  m1    c1 ", Text(FrameRate.TwentyNineNinetySeven), StringComparison.Ordinal);
    }

    [Fact]
    public void Cues_stand_in_order_and_none_is_missing()
    {
        Assert.Equal(Cues.Select(c => c.Moment).Order(), Cues.Select(c => c.Moment));
        Assert.Equal(Ferry.Steps.Count(s => s.Row.Cue != Cue.None), Cues.Count(c => c.Kind is "voice" or "sound" or "touch"));
        Assert.Equal(Ferry.Steps[^1].After.Attackers.Sum(a => a.Falls) + Ferry.Steps.Count(s => s.Technique!.HeroFall != FallClass.None), Cues.Count(c => c.Kind == "fall"));
        Assert.Equal(3, Cues.Count(c => c.Kind == "out"));
        Assert.Equal(Ferry.Steps.Count(s => s.HasTarget && s.Technique!.Knap != Knap.Breath), Cues.Count(c => c.Kind == "knap"));
        Assert.Equal(Ferry.Routine.Placements.Count(p => p.Entrance > HalfCounts.Zero), Cues.Count(c => c.Kind == "enters"));
    }

    [Fact]
    public void A_voice_cue_comes_before_its_attack_lands() =>
        Assert.All(Cues.Where(c => c.Kind == "voice"), c => Assert.True(c.Moment < Ferry.Steps[c.Move - 1].Contact, $"{c}"));

    private static string Text(FrameRate rate) => CueList.Text(Ferry.Routine.Brief.Title, Cues, Ferry.Routine.Brief.Tempo, rate);
}
