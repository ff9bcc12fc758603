using Generator.Rules.Bodies;

namespace Generator.Paperwork.Following;

/// <summary>The legs of somebody's way as keyframes; time never runs backwards.</summary>
internal static class Trail
{
    /// <param name="from">First half count of the course: where somebody has not come in by then, they are shown at the place where they will.</param>
    /// <param name="last">Their last leg.</param>
    public static IReadOnlyList<Keyframe> Of(int from, Leg last)
    {
        var legs = new List<Leg>();
        for (var leg = last; leg is not null; leg = leg.Before)
        {
            // Where somebody lies is where their way has ended.
            if (!leg.Lies)
            {
                legs.Add(leg);
            }
        }

        legs.Reverse();
        var frames = new List<Keyframe> { new(from, legs[0].Start.Rounded()) };
        foreach (var leg in legs)
        {
            // Who lies until the next leg takes them up stays where they lie.
            Go(frames, leg.From, frames[^1].Place);
            Go(frames, leg.From, leg.Start.Rounded());
            Go(frames, leg.To, leg.End.Rounded());
        }

        return frames;
    }

    private static void Go(List<Keyframe> frames, double time, Place place)
    {
        var last = frames[^1];
        if (double.IsInfinity(time))
        {
            return;
        }

        // Where the next move takes somebody over as soon as they arrive, they arrive first: both places stand at that moment.
        var arrives = time == last.Time && frames.Count > 1 && frames[^2].Time < time && last.Place != place;
        if ((time <= last.Time && !arrives) || (last.Place == place && frames.Count > 1 && frames[^2].Place == place))
        {
            frames[^1] = new Keyframe(Math.Max(time, last.Time), place);
        }
        else
        {
            frames.Add(new Keyframe(time, place));
        }
    }
}
