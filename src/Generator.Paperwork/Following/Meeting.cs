using Generator.Figures.Bodies;
using Generator.Figures.Posing;

namespace Generator.Paperwork.Following;

/// <summary>Where two bodies meet, or a planned miss stops.</summary>
/// <param name="Time">Half count.</param>
/// <param name="At">Metres from the hero's first mark.</param>
/// <param name="Kind">What happens there.</param>
public readonly record struct Meeting(int Time, Vec At, MarkKind Kind);
