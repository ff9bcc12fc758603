using System.Globalization;
using Generator.Domain;
using Generator.Rules.Replaying;

namespace Generator.Rules;

/// <summary>The trade's words for what findings speak of.</summary>
internal static class Words
{
    /// <summary>The number of the other of hero and ally, among people by number.</summary>
    public const int Other = -2;

    /// <summary>Name of an attacker, of the hero for −1, or of the other of hero and ally for <see cref="Other"/>.</summary>
    public static string Name(Scene scene, int attacker) => attacker switch
    {
        Other => scene.Brief.Ally!.Part.Name,
        < 0 => scene.Brief.Hero.Name,
        _ => scene.Brief.Attackers[attacker].Name,
    };

    /// <summary>"the hero"; by name where there are two.</summary>
    public static string TheHero(Scene scene) => scene.Brief.Ally is null ? "the hero" : scene.Brief.Hero.Name;

    /// <summary>The name of a technique, an attack or a reaction within a sentence: "outside block left".</summary>
    public static string Low(string name) => name.Length == 0 ? name : char.ToLowerInvariant(name[0]) + name[1..];

    /// <summary>The name at the head of a sentence.</summary>
    public static string Cap(string name) => name.Length == 0 ? name : char.ToUpperInvariant(name[0]) + name[1..];

    public static string Of(Posture posture) => posture.InWords();

    /// <summary>"ready, turned or off balance".</summary>
    public static string Of(PostureSet postures) => Join([.. postures.Members.Select(Of)], "or");

    /// <summary>What a technique asks of a hand: "in guard".</summary>
    public static string Of(HandNeed need) => need switch
    {
        HandNeed.Guard => "in guard",
        HandNeed.GuardOrOut => "in guard or out",
        HandNeed.Out => "out already",
        HandNeed.TakeHold => "free to take hold",
        HandNeed.Holding => "holding the target",
        HandNeed.Held => "held by the target",
        HandNeed.HoldingOther => "holding somebody else",
        HandNeed.HeldByOther => "held by somebody else",
        HandNeed.NotHolding => "holding nobody",
        HandNeed.Unused => "not held",
        _ => "as it is",
    };

    /// <summary>What a hand does: "holding Bruno".</summary>
    public static string Of(Scene scene, Hand hand) => hand.Kind switch
    {
        HandKind.Guard => "in guard",
        HandKind.Out => "still out",
        HandKind.Holding => "holding " + Name(scene, hand.Who),
        _ => "held by " + Name(scene, hand.Who),
    };

    /// <summary>What ends the floor on a bearing, and how far out.</summary>
    public static string FloorEnds(FloorReach floor, int bearing) =>
        floor.InTheWay(bearing) is { } thing ? $"{thing} closes the floor at {Metres(floor[bearing])}" : $"the floor is clear for {Metres(floor[bearing])}";

    public static string Metres(int centimetres) => new Centimetres(centimetres).ToString();

    public static string Seconds(decimal seconds) => seconds.ToString("0.00", CultureInfo.InvariantCulture) + " s";

    /// <summary>A span of half counts with its unit: "1 count", "2.5 counts".</summary>
    public static string Counts(int halfCounts) => new HalfCounts(halfCounts).InWords;

    public static string Join(IReadOnlyList<string> words, string conjunction) => words.Count switch
    {
        0 => "nothing",
        1 => words[0],
        _ => string.Join(", ", words.Take(words.Count - 1)) + $" {conjunction} " + words[^1],
    };
}
