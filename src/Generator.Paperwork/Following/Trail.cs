using Generator.Domain;

namespace Generator.Paperwork.Following;

/// <summary>Keyframes while they are being laid down; time never runs backwards.</summary>
internal sealed class Trail
{
    private readonly List<Keyframe> frames = [];

    public Trail(int time, Spot spot) => frames.Add(new Keyframe(time, spot));

    public IReadOnlyList<Keyframe> Frames => frames;

    /// <summary>Stands still until a moment.</summary>
    public void Stay(int until) => Go(until, frames[^1].Spot);

    /// <summary>Is at a place at a moment.</summary>
    public void Go(int time, Spot spot)
    {
        var last = frames[^1];
        var when = Math.Max(time, last.Time);
        if (when == last.Time)
        {
            frames[^1] = new Keyframe(when, spot);
        }
        else if (last.Spot != spot || (frames.Count > 1 && frames[^2].Spot != last.Spot) || frames.Count == 1)
        {
            frames.Add(new Keyframe(when, spot));
        }
        else
        {
            frames[^1] = new Keyframe(when, spot);
        }
    }

    /// <summary>Walks round the clock to a bearing by the shortest way, one keyframe each half hour.</summary>
    public void Round(int until, int from, int to, int distance, int end)
    {
        var turn = new Bearing(from).To(new Bearing(to)).HalfHours;
        var (start, steps) = (frames[^1].Time, Math.Abs(turn));
        for (var i = 1; i <= steps; i++)
        {
            var share = (double)i / steps;
            Go(start + (int)Math.Round((until - start) * share), Spot.At(from + (turn * share), distance + ((end - distance) * share)));
        }
    }
}
