namespace Generator.Domain;

/// <summary>
/// The words by which a brief says what a performer must not be asked: <c>no-</c> and a demand; <c>no-</c>, a class of fall and <c>-fall</c>; or
/// <c>injured-</c> and a part of the body, which then is asked nothing.
/// </summary>
public static class Limit
{
    private const string Injured = "injured-";

    private static readonly string[] Injuries =
    [
        .. ((string[])["hip", "knee", "ankle", "shoulder", "elbow", "wrist"]).SelectMany(j => (string[])[$"{Injured}left-{j}", $"{Injured}right-{j}"]), Injured + "neck", Injured + "back",
    ];

    /// <summary>Every limit there is, those of demands first.</summary>
    public static IReadOnlyList<string> All { get; } =
        [.. Demand.All.Select(On), .. Enum.GetValues<FallClass>().Where(f => f != FallClass.None).Select(On), .. Injuries];

    /// <summary>The parts of the body that a limit spares: whoever must not work with a leg must not stand, turn or land on it alone either.</summary>
    public static BodyParts Spares(string limit) => limit switch
    {
        "no-left-leg" => BodyParts.LeftLeg,
        "no-right-leg" => BodyParts.RightLeg,
        _ when limit.StartsWith(Injured, StringComparison.Ordinal) => BodyPartWords.Find(limit[Injured.Length..]),
        _ => BodyParts.None,
    };

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
}
