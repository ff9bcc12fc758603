using System.Globalization;

namespace Generator.Paperwork.HandOffs;

/// <summary>
/// A frame rate and its timecode (SMPTE ST 12-1). 29.97 is 30000/1001 frames a second and drop-frame: the labels ;00 and ;01 are left out each
/// minute, except every tenth, so that timecode keeps up with the clock.
/// </summary>
public sealed record FrameRate
{
    private const int DroppedAMinute = 2;

    public static readonly FrameRate TwentyFour = new("24", 24, 1, 24, false);

    public static readonly FrameRate TwentyFive = new("25", 25, 1, 25, false);

    public static readonly FrameRate TwentyNineNinetySeven = new("29.97", 30000, 1001, 30, true);

    public static readonly FrameRate Thirty = new("30", 30, 1, 30, false);

    private FrameRate(string name, int frames, int seconds, int labels, bool drops) =>
        (Name, Frames, Seconds, Labels, Drops) = (name, frames, seconds, labels, drops);

    /// <summary>From the slowest to the fastest, 29.97 before 30.</summary>
    public static IReadOnlyList<FrameRate> All { get; } = [TwentyFour, TwentyFive, TwentyNineNinetySeven, Thirty];

    /// <summary>"24", "25", "29.97" or "30".</summary>
    public string Name { get; }

    /// <summary>So many frames in <see cref="Seconds"/>.</summary>
    public int Frames { get; }

    public int Seconds { get; }

    /// <summary>Labels in a second of timecode.</summary>
    public int Labels { get; }

    /// <summary>Drop-frame.</summary>
    public bool Drops { get; }

    /// <summary>The frame that is nearest to a time from the start; found anew for each time, so that nothing adds up.</summary>
    public long FrameAt(ExactSeconds time) => time.Nearest(Frames, Seconds);

    /// <summary>The timecode of a frame from 0 on: "00:01:00:02", with ";" before the frames in drop-frame.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The frame lies before the start.</exception>
    public string LabelOf(long frame)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(frame);
        var label = Drops ? Counted(frame) : frame;
        var (minutes, seconds) = Math.DivRem(label / Labels, 60);
        return string.Create(CultureInfo.InvariantCulture, $"{minutes / 60:00}:{minutes % 60:00}:{seconds:00}{(Drops ? ';' : ':')}{label % Labels:00}");
    }

    /// <summary>The frame of a timecode; refuses what no frame has, such as 00:01:00;00 in drop-frame.</summary>
    public bool TryParse(string text, out long frame)
    {
        frame = 0;
        var parts = text.Split(':', ';');
        if (parts.Length != 4 || text.Contains(';', StringComparison.Ordinal) != Drops || !parts.All(p => p.Length >= 2 && p.All(char.IsAsciiDigit) && p.Length < 6))
        {
            return false;
        }

        var (hours, minutes, seconds, rest) = (Number(parts[0]), Number(parts[1]), Number(parts[2]), Number(parts[3]));
        var totalMinutes = (hours * 60) + minutes;
        if (minutes > 59 || seconds > 59 || rest >= Labels || (Drops && seconds == 0 && rest < DroppedAMinute && minutes % 10 != 0))
        {
            return false;
        }

        var dropped = Drops ? DroppedAMinute * (totalMinutes - (totalMinutes / 10)) : 0;
        frame = (((totalMinutes * 60) + seconds) * Labels) + rest - dropped;
        return true;
    }

    public override string ToString() => Drops ? Name + " drop-frame" : Name;

    /// <summary>The number of the label: the frames and the labels left out before it.</summary>
    private long Counted(long frame)
    {
        var minute = (60L * Labels) - DroppedAMinute;
        var tenMinutes = (10 * minute) + DroppedAMinute;
        var (tens, inside) = Math.DivRem(frame, tenMinutes);
        var minutes = inside < 60L * Labels ? 0 : 1 + ((inside - (60L * Labels)) / minute);
        return frame + (tens * 9 * DroppedAMinute) + (minutes * DroppedAMinute);
    }

    private static long Number(string digits) => long.Parse(digits, NumberStyles.None, CultureInfo.InvariantCulture);
}
