namespace Generator.Solver.Rules;

/// <summary>
/// One statement about two places on the floor: when their bearings lie at most <paramref name="Apart"/> half hours apart and the other is
/// from <paramref name="From"/> to <paramref name="To"/>, the first must keep to <paramref name="Limit"/>. Places in tens of centimetres from the mark.
/// </summary>
/// <param name="Apart">0 to 12.</param>
/// <param name="From">0 and more.</param>
/// <param name="To">At least <paramref name="From"/>; <see cref="int.MaxValue"/> for everything beyond the tables.</param>
/// <param name="Limit">For a bound from above the farthest place that is still right, which may be −1; for one from below the nearest.</param>
internal sealed record FloorStep(int Apart, int From, int To, int Limit);
