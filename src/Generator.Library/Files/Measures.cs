using Generator.Library.Reading;

namespace Generator.Library.Files;

/// <summary>The ranges of all numbers in briefs and routines.</summary>
public static class Measures
{
    public static readonly Quantity Tempo = new("a tempo", Domain.Tempo.Slowest, Domain.Tempo.Fastest, "counts a minute", "Maybe it is in seconds; write counts a minute, such as 100.");
    public static readonly Quantity HeldSeconds = new("a time", 0.1m, 60, "s", "Maybe it is in counts; write seconds, such as 2.5.");
    public static readonly Quantity HeldCounts = new("a number of counts", 1, 64, "counts", "Maybe write whole counts of the music, such as 4.");
    public static readonly Quantity Counts = new("a length", 4, 2000, "counts", "Maybe it is in seconds or moves; write counts, such as 48.");
    public static readonly Quantity Moves = new("a number of moves", 1, 500);
    public static readonly Quantity Tolerance = new("a tolerance", 0, 200);

    public static readonly Quantity FloorSide = new("a side of the floor", 1, 100, "m", "Maybe it is in feet or centimetres; write metres, such as 8.");
    public static readonly Quantity Place = new("a place", 0, 100, "m", "Maybe it is in centimetres; write metres from the corner between 6 and 9.");
    public static readonly Quantity WayIn = new("a place", -3, 103, "m", "Maybe it is in centimetres; write metres from the corner between 6 and 9.");
    public static readonly Quantity Thing = new("a size", 0.01m, 100, "m", "Maybe it is in centimetres; write metres, such as 0.6.");
    public static readonly Quantity Mat = new("a size", 0.05m, 100, "m", "Maybe it is in centimetres; write metres, such as 2.");
    public static readonly Quantity ThingHeight = new("a height", 0.05m, 5, "m", "Maybe it is in centimetres; write metres, such as 0.75.");

    public static readonly Quantity PropDistance = new("a distance", 0.5m, 20, "m", "Maybe it is in centimetres; write metres from the mark, such as 1.5.");
    public static readonly Quantity PropLength = new("a length", 0m, 2m, "m", "Maybe it is in centimetres; write metres beyond the hand, such as 0.6.");

    public static readonly Quantity Stature = new("a height", 1.40m, 2.10m, "m", "Maybe it is in feet or centimetres; write metres, such as 1.76.");
    public static readonly Quantity Arm = new("an arm length", 0.40m, 1.00m, "m", "Maybe it is in centimetres; write metres from shoulder to fist, such as 0.68.");
    public static readonly Quantity Leg = new("a leg length", 0.50m, 1.30m, "m", "Maybe it is in centimetres; write metres from hip to ankle, such as 0.86.");
    public static readonly Quantity FallsPerRun = new("a number of falls", 0, 20);
    public static readonly Quantity Opening = new("a distance", 1, 20, "m", "Maybe it is in feet or centimetres; write metres from the mark, such as 3.");
    public static readonly Quantity AllyDistance = new("a distance", 0.5m, 20, "m", "Maybe it is in feet or centimetres; write metres from mark to mark, such as 1.5.");
    public static readonly Quantity Speed = new("a speed", 0.5m, 7, "m/s", "Maybe it is in km/h; a walk is about 1.4 m/s, a jog 2, a rush 3 and more.");
    public static readonly Quantity Share = new("a share", 0, 1, string.Empty, "Maybe it is in percent; write 0.4 for 40 percent.");
    public static readonly Quantity ActShare = new("a share", 0.01m, 1, string.Empty, "Maybe it is in percent; write 0.4 for 40 percent.");

    public static readonly Quantity CameraDistance = new("a distance", 0.5m, 200, "m", "Maybe it is in centimetres; write metres from the mark, such as 5.");
    public static readonly Quantity CameraHeight = new("a height", 0, 20, "m", "Maybe it is in centimetres; write metres of the lens above the floor, such as 1.5.");

    public static readonly Quantity Asked = new("a number", 0, 50);
    public static readonly Quantity Answered = new("a share", 0, 0.5m, string.Empty, "Maybe it is in percent; write 0.1 for one blow in ten. Half of all is the most.");
    public static readonly Quantity Span = new("a time", 0, 60, "counts", "Maybe it is in seconds; write counts, such as 4.");
    public static readonly Quantity Runs = new("a number of runs", 1, 50);
    public static readonly Quantity FallsPerDay = new("a number of falls", 0, 1000);
    public static readonly Quantity HeadHitsPerDay = new("a number of hits", 0, 5000);
}
