using Generator.Domain;
using Generator.Paperwork;
using Generator.Paperwork.HandOffs;

namespace Generator.Outside.Tests;

/// <summary>Timecode against SMPTE ST 12-1.</summary>
public class TimecodeTests
{
    private static readonly FrameRate Drop = FrameRate.TwentyNineNinetySeven;

    [Theory(DisplayName = "SMPTE ST 12-1: drop-frame labels of known frames")]
    [InlineData(0, "00:00:00;00")]
    [InlineData(1799, "00:00:59;29")]
    [InlineData(1800, "00:01:00;02")]
    [InlineData(17981, "00:09:59;29")]
    [InlineData(17982, "00:10:00;00")]
    [InlineData(19782, "00:11:00;02")]
    [InlineData(107892, "01:00:00;00")]
    [InlineData(2589407, "23:59:59;29")]
    public void Known_frames(long frame, string label)
    {
        Assert.Equal(label, Drop.LabelOf(frame));
        Assert.True(Drop.TryParse(label, out var back));
        Assert.Equal(frame, back);
    }

    [Theory(DisplayName = "SMPTE ST 12-1: labels that drop-frame leaves out, and labels of another kind, are refused")]
    [InlineData("00:01:00;00")]
    [InlineData("00:01:00;01")]
    [InlineData("00:59:00;00")]
    [InlineData("00:00:00:00")]
    [InlineData("00:00:60;00")]
    [InlineData("00:60:00;02")]
    [InlineData("00:00:00;30")]
    [InlineData("00:00:00")]
    [InlineData("0:0:0;0")]
    [InlineData("00:00:0a;00")]
    public void Left_out_labels(string label) => Assert.False(Drop.TryParse(label, out _));

    [Fact(DisplayName = "SMPTE ST 12-1: ten minutes hold 17,982 frames, an hour 107,892, a day 2,589,408")]
    public void Totals()
    {
        Assert.True(Drop.TryParse("00:10:00;00", out var ten));
        Assert.True(Drop.TryParse("01:00:00;00", out var hour));
        Assert.True(Drop.TryParse("24:00:00;00", out var day));
        Assert.Equal((17982, 107892, 2589408), (ten, hour, day));
    }

    [Fact(DisplayName = "SMPTE ST 12-1: every frame of an hour comes back from its label, and labels only go forward")]
    public void Every_frame_comes_back()
    {
        foreach (var rate in FrameRate.All)
        {
            var before = string.Empty;
            for (var frame = 0L; frame <= 3600L * rate.Labels; frame++)
            {
                var label = rate.LabelOf(frame);
                Assert.True(string.CompareOrdinal(before, label) < 0);
                Assert.True(rate.TryParse(label, out var back) && back == frame, label);
                before = label;
            }
        }
    }

    [Fact(DisplayName = "30000/1001 frames a second: an hour of drop-frame lasts 3,599.9964 s")]
    public void Residual()
    {
        Assert.True(Drop.TryParse("01:00:00;00", out var hour));
        Assert.Equal("3599.996", new ExactSeconds(hour * Drop.Seconds, Drop.Frames).ToThousandths());
        Assert.Equal(107892, Drop.FrameAt(new ExactSeconds(35_999_964, 10_000)));
        Assert.Equal(107892, Drop.FrameAt(new ExactSeconds(3600, 1)));
    }

    [Theory(DisplayName = "Tempo to time: eight counts at 120 bpm last 4 s; a beat is 12 frames at 24, 12.5 at 25, 14.985 at 29.97, 15 at 30")]
    [InlineData("24", 12, 96)]
    [InlineData("25", 13, 100)]
    [InlineData("29.97", 15, 120)]
    [InlineData("30", 15, 120)]
    public void Beats(string name, long beat, long eight)
    {
        var rate = FrameRate.All.Single(r => r.Name == name);
        Assert.Equal(beat, rate.FrameAt(ExactSeconds.Of(HalfCounts.FromCounts(1), new Tempo(120))));
        Assert.Equal(eight, rate.FrameAt(ExactSeconds.Of(HalfCounts.FromCounts(8), new Tempo(120))));
    }

    [Fact(DisplayName = "Rounding to frames never adds up: after 2,000 beats of 12.5 frames the timecode is right to half a frame")]
    public void Rounding_does_not_add_up()
    {
        for (var beat = 0; beat <= 2000; beat++)
        {
            var frame = FrameRate.TwentyFive.FrameAt(ExactSeconds.Of(HalfCounts.FromCounts(beat), new Tempo(120)));
            Assert.InRange((2 * frame) - (25L * beat), 0, 1);
        }
    }

    [Fact(DisplayName = "Drop-frame is not offered for 23.976")]
    public void Offered_rates() => Assert.Equal(["24", "25", "29.97 drop-frame", "30"], FrameRate.All.Select(r => r.ToString()));
}
