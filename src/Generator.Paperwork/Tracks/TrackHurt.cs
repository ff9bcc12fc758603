namespace Generator.Paperwork.Tracks;

/// <summary>While somebody plays a hurt part of the body, as a jagged line under their track.</summary>
/// <param name="X">Where it begins, in units of the drawing.</param>
/// <param name="Width">How long it is.</param>
/// <param name="Told">What is played: "plays a hurt left knee from count 12 until count 24".</param>
public sealed record TrackHurt(double X, double Width, string Told);
