namespace Generator.Figures.Painting;

/// <summary>A point as a camera sees it: right, down and away; metres.</summary>
internal readonly record struct Seen(double X, double Y, double Away);
