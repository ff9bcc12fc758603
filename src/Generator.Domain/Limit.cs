namespace Generator.Domain;

/// <summary>
/// The words by which a brief says what a performer must not be asked. Short ones: <c>no-</c> and a demand; <c>no-</c>, a class of fall and
/// <c>-fall</c>; <c>injured-</c> and a joint, the neck or the back. Written out, a part of the body and what it must not do (<see cref="PartLimit"/>).
/// </summary>
public static class Limit
{
    private const string Injured = "injured-";

    private const string IsHurt = "hurt-";

    private static readonly string[] Injuries =
    [
        .. ((string[])["hip", "knee", "ankle", "shoulder", "elbow", "wrist"]).SelectMany(j => (string[])[$"{Injured}left-{j}", $"{Injured}right-{j}"]), Injured + "neck", Injured + "back",
    ];

    /// <summary>Every short limit, those of demands first.</summary>
    public static IReadOnlyList<string> All { get; } =
        [.. Demand.All.Select(On), .. Enum.GetValues<FallClass>().Where(f => f != FallClass.None).Select(On), .. Injuries];

    /// <summary>
    /// What no part of the body may be asked under a limit. A part that is injured, a leg that must not work and a hand that must not are asked nothing at all:
    /// nobody stands, turns or lands on them either. Nothing for a limit that says no part.
    /// </summary>
    public static Load Forbids(string limit) => limit switch
    {
        "no-left-leg" => Spared(BodyParts.LeftLeg),
        "no-right-leg" => Spared(BodyParts.RightLeg),
        "no-left-hand" => Spared(BodyParts.LeftWrist),
        "no-right-hand" => Spared(BodyParts.RightWrist),
        _ when limit.StartsWith(IsHurt, StringComparison.Ordinal) => Spared(BodyPartWords.Find(limit[IsHurt.Length..])),
        _ when limit.StartsWith(Injured, StringComparison.Ordinal) => Spared(BodyPartWords.Find(limit[Injured.Length..])),
        _ => PartLimit.Find(limit)?.Load ?? default,
    };

    /// <summary>The limit of somebody whose part has been hurt in the fight: the same as for an injured one. No brief says it; a move does (<see cref="Hurt"/>).</summary>
    public static string Hurting(string part) => IsHurt + part;

    /// <summary>The part that such a limit spares; null for every other limit.</summary>
    public static string? HurtPart(string limit) => limit.StartsWith(IsHurt, StringComparison.Ordinal) ? limit[IsHurt.Length..] : null;

    /// <summary>The limit that forbids a demand: <c>no-jump</c>.</summary>
    public static string On(string demand) => "no-" + demand;

    /// <summary>The limit that forbids one class of fall: <c>no-back-fall</c>.</summary>
    /// <exception cref="ArgumentOutOfRangeException">For no fall at all.</exception>
    public static string On(FallClass fall) => fall switch
    {
        FallClass.ToKnee => "no-to-knee-fall",
        FallClass.Back => "no-back-fall",
        FallClass.Side => "no-side-fall",
        FallClass.Forward => "no-forward-fall",
        FallClass.ThrownOver => "no-thrown-over-fall",
        _ => throw new ArgumentOutOfRangeException(nameof(fall), fall, "There is no limit on not falling."),
    };

    /// <summary>
    /// Every limit that forbids a fall: that of its class, and the wider one (<c>no-kneel</c> for a fall to a knee, <c>no-fall</c> for the rest).
    /// Empty for no fall.
    /// </summary>
    public static IReadOnlyList<string> Against(FallClass fall) => fall switch
    {
        FallClass.None => [],
        FallClass.ToKnee => [On(fall), On(Demand.Kneel)],
        _ => [On(fall), On(Demand.Fall)],
    };

    private static Load Spared(BodyParts parts) => Load.Each(_ => parts);
}
