namespace Generator.Figures.Poses;

/// <summary>
/// An arm or a leg as angles in degrees, against the trunk from which it hangs. Left and right are written the same way: outwards is away from the body.
/// </summary>
/// <param name="Raise">0 hanging, 90 straight ahead, 180 overhead, below 0 behind.</param>
/// <param name="Spread">Outwards; below 0 across the body.</param>
/// <param name="Twist">Round its own length, inwards: at 90 a bent elbow points the forearm inwards, and a bent knee the shank outwards.</param>
/// <param name="Bend">Elbow or knee; 0 is straight. It bends one way only.</param>
/// <param name="End">Wrist, or foot against the shank: 0 a right angle, above 0 pointed. Null lets a foot lie level and stand on the floor.</param>
public readonly record struct LimbPose(double Raise, double Spread, double Twist, double Bend, double? End);
