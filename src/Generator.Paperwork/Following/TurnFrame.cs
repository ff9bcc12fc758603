namespace Generator.Paperwork.Following;

/// <summary>The hero's facing at a moment, in degrees clockwise from 12; not wrapped, so that a turn goes the way it is made.</summary>
public readonly record struct TurnFrame(int Time, int Degrees);
