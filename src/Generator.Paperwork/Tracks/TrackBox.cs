using Generator.Paperwork.Following;

namespace Generator.Paperwork.Tracks;

/// <summary>One thing that a performer does, as a box on a track.</summary>
/// <param name="X">Left edge in units of the drawing.</param>
/// <param name="Width">Its length.</param>
/// <param name="Doing">What it is.</param>
/// <param name="Text">The word or the number of the move in it; empty where it does not fit or none is needed.</param>
/// <param name="Size">Font size of the text.</param>
public sealed record TrackBox(double X, double Width, Doing Doing, string Text, double Size);
