using Generator.Domain;

namespace Generator.Figures.Bodies;

/// <summary>A body in space: where every joint is, in metres, and how trunk and head are turned. It never changes.</summary>
public sealed class Figure
{
    private readonly Vec[] points;

    internal Figure(double stature, Vec[] points, Turned hips, Turned chest, Turned head, bool open)
    {
        (Stature, this.points, HipsTurned, ChestTurned, HeadTurned, IsOpen) = (stature, points, hips, chest, head, open);
    }

    /// <summary>Metres.</summary>
    public double Stature { get; }

    public Turned HipsTurned { get; }

    public Turned ChestTurned { get; }

    public Turned HeadTurned { get; }

    /// <summary>Hands are open and not fists.</summary>
    public bool IsOpen { get; }

    public Vec this[Joint joint] => points[(int)joint];

    public Vec HeadCentre => (this[Joint.Head] + this[Joint.Crown]) * 0.5;

    public Vec Face => HeadCentre + (HeadTurned.Ahead * (Skeleton.Face * Stature));

    /// <summary>The end of the heel.</summary>
    public Vec Heel(Side side)
    {
        var (_, _, ankle, ball) = Skeleton.Leg(side);
        var foot = this[ball] - this[ankle];
        return this[ankle] - (foot * (Skeleton.Heel / Skeleton.Toes)) - (Vec.Up * (Math.Abs(foot.Unit.Y) < 0.5 ? 0.04 * Stature : 0));
    }

    /// <summary>How far the lowest part of the body is above the floor, below 0 under it.</summary>
    public double Lowest => Enum.GetValues<Joint>().Min(j => points[(int)j].Y - (Skeleton.Thickness(j) * Stature));

    public Figure Moved(Vec way) => Changed([.. points.Select(p => p + way)]);

    /// <summary>Turned to the left round the upright line through its mark.</summary>
    public Figure TurnedLeft(double degrees)
    {
        var turn = Turned.Leftwards(degrees);
        return new(Stature, [.. points.Select(p => turn * p)], turn * HipsTurned, turn * ChestTurned, turn * HeadTurned, IsOpen);
    }

    /// <summary>Bent at the waist: everything above it turned about it.</summary>
    internal Figure Bent(Turned turn)
    {
        var (copy, waist) = ((Vec[])points.Clone(), this[Joint.Waist]);
        foreach (var joint in Enum.GetValues<Joint>().Where(j => j is (>= Joint.Chest and <= Joint.RightWrist) or >= Joint.Crown))
        {
            copy[(int)joint] = waist + (turn * (this[joint] - waist));
        }

        return new(Stature, copy, HipsTurned, turn * ChestTurned, turn * HeadTurned, IsOpen);
    }

    /// <summary>Seen in a mirror, so that left is right.</summary>
    public Figure Mirrored
    {
        get
        {
            var mirrored = new Vec[Skeleton.Points];
            foreach (var joint in Enum.GetValues<Joint>())
            {
                mirrored[(int)Skeleton.Mirrored(joint)] = this[joint].Mirrored;
            }

            return new(Stature, mirrored, HipsTurned.Mirrored, ChestTurned.Mirrored, HeadTurned.Mirrored, IsOpen);
        }
    }

    /// <summary>Some joints elsewhere.</summary>
    internal Figure With(params ReadOnlySpan<(Joint Joint, Vec At)> moved)
    {
        var copy = (Vec[])points.Clone();
        foreach (var (joint, at) in moved)
        {
            copy[(int)joint] = at;
        }

        return Changed(copy);
    }

    private Figure Changed(Vec[] changed) => new(Stature, changed, HipsTurned, ChestTurned, HeadTurned, IsOpen);
}
