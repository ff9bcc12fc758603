using System.Globalization;

namespace Generator.Domain;

/// <summary>
/// Where the target must lie relative to the hero's facing: from <see cref="From"/> clockwise to <see cref="To"/>, in half hours
/// (0 straight ahead, 6 at the right, 12 behind). <c>To − From</c> is 0 to 23; 23 covers the whole circle.
/// </summary>
public readonly record struct Window(int From, int To)
{
    /// <summary>Anywhere.</summary>
    public static readonly Window Anywhere = new(-11, 12);

    public bool IsAnywhere => To - From >= Bearing.Circle - 1;

    public bool Contains(Turn relative) => new Bearing(relative.HalfHours - From).HalfHours <= To - From;

    /// <summary>
    /// The smallest turn of the hero that brings a target lying at <paramref name="relative"/> into the window (0 when it is in already);
    /// of two equal turns the clockwise one.
    /// </summary>
    public Turn TurnFor(Turn relative)
    {
        if (IsAnywhere || Contains(relative))
        {
            return Turn.None;
        }

        // Turning clockwise by n moves the target to relative - n; it enters the window at To. Turning the other way it enters at From.
        var clockwise = new Bearing(relative.HalfHours - To).HalfHours;
        var counter = new Bearing(From - relative.HalfHours).HalfHours;
        return clockwise <= counter ? new Turn(clockwise) : new Turn(-counter);
    }

    public Window Mirrored => IsAnywhere ? this : new(-To, -From);

    /// <summary>Both ends; the text of a record would print its mirror, and that its own, for ever.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{From} to {To}");
}
