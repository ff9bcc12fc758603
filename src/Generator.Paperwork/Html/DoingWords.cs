using Generator.Paperwork.Following;

namespace Generator.Paperwork.Html;

/// <summary>What the tracks and the playback call each doing.</summary>
internal static class DoingWords
{
    /// <summary>Doings of attackers in the order of the key.</summary>
    public static IReadOnlyList<Doing> OfAttackers { get; } =
        [Doing.NotIn, Doing.Enters, Doing.Ready, Doing.Waiting, Doing.ComesIn, Doing.Attack, Doing.Reaction, Doing.Fall, Doing.Reset, Doing.Held, Doing.Grips, Doing.Out];

    /// <summary>Doings of the hero in the order of the key.</summary>
    public static IReadOnlyList<Doing> OfHero { get; } =
        [Doing.Between, Doing.Defends, Doing.Hits, Doing.Grapples, Doing.Finishes, Doing.Setback, Doing.Pauses];

    public static string Of(Doing doing) => doing switch
    {
        Doing.NotIn => "off the floor",
        Doing.Ready => "ready",
        Doing.Waiting => "waiting",
        Doing.Enters => "enters",
        Doing.ComesIn => "closes in",
        Doing.Attack => "attacks",
        Doing.Reaction => "reacts",
        Doing.Fall => "falls",
        Doing.Reset => "recovering",
        Doing.Held => "held",
        Doing.Grips => "grips the hero",
        Doing.Out => "out",
        Doing.Between => "no move",
        Doing.Defends => "defends",
        Doing.Hits => "hits",
        Doing.Grapples => "throws, locks, escapes",
        Doing.Finishes => "finishes",
        Doing.Setback => "setback",
        _ => "pause",
    };

    /// <summary>Name of the style: "closes-in".</summary>
    public static string Style(Doing doing) => "d-" + doing switch
    {
        Doing.NotIn => "not-in",
        Doing.ComesIn => "closes-in",
        _ => Text.Words.Of(doing),
    };
}
