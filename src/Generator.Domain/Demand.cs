namespace Generator.Domain;

/// <summary>The words for what a technique or an attack asks of the body. Each can be forbidden by a limit (<see cref="Limit"/>) or by wardrobe.</summary>
public static class Demand
{
    public const string LeftHand = "left-hand";
    public const string RightHand = "right-hand";
    public const string LeftLeg = "left-leg";
    public const string RightLeg = "right-leg";
    public const string Jump = "jump";

    /// <summary>Turning right round, or a good part of the way, on the ball of a foot.</summary>
    public const string Spin = "spin";
    public const string Kneel = "kneel";

    /// <summary>Rolling, lying, or hands on the floor.</summary>
    public const string Floor = "floor";

    /// <summary>A leg above the hip.</summary>
    public const string HighKick = "high-kick";

    /// <summary>Falling further than to a knee.</summary>
    public const string Fall = "fall";

    /// <summary>An arm worked above the shoulder.</summary>
    public const string Overhead = "overhead";

    public static IReadOnlyList<string> All { get; } =
        [LeftHand, RightHand, LeftLeg, RightLeg, Jump, Spin, Kneel, Floor, HighKick, Fall, Overhead];
}
