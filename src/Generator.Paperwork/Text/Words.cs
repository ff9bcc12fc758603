using System.Globalization;
using Generator.Domain;
using Generator.Library.Reading;
using Generator.Paperwork.HandOffs;

namespace Generator.Paperwork.Text;

/// <summary>How values are said on paper.</summary>
public static class Words
{
    /// <summary>"left-lead" is read "left lead".</summary>
    public static string Of<T>(T value)
        where T : struct, Enum => EnumWords.Of(value).Replace('-', ' ');

    public static string Of(Posture posture) => posture.InWords();

    /// <summary>A name within a sentence: "outside block left".</summary>
    public static string Low(string name) => name.Length == 0 ? name : char.ToLowerInvariant(name[0]) + name[1..];

    /// <summary>"12 o'clock", "2:30".</summary>
    public static string Clock(Bearing bearing) => bearing.InWords;

    public static string Clock(int halfHours) => Clock(new Bearing(halfHours));

    /// <summary>A moment in half counts: "14&amp;"; before count 1 the click of the count-in, "click 3", "click 3&amp;".</summary>
    public static string Count(int moment)
    {
        var click = moment + (ShowClock.CountIn * HalfCounts.PerCount);
        return moment < 0 && click >= 0 ? "click " + new HalfCounts(click).ToCountText() : new HalfCounts(moment).ToCountText();
    }

    /// <summary>The same in a sentence: "count 14&amp;", "click 3 of the count-in".</summary>
    public static string AtCount(int moment) => moment < 0 ? Count(moment) + " of the count-in" : "count " + Count(moment);

    /// <summary>The same where there is little room: "c14&amp;", "click 3&amp;".</summary>
    public static string CountTag(int moment) => Count(moment) is var count && char.IsDigit(count[0]) ? "c" + count : count;

    /// <summary>"m4", where there is little room; papers that say it so bear <see cref="Tags"/>.</summary>
    public static string MoveTag(int number) => "m" + Number(number);

    /// <summary>A move and the count at which it starts, with little room: "m4 c14&amp;".</summary>
    public static string Tag(Rules.Replaying.Step step) => $"{MoveTag(step.Index + 1)} {CountTag(step.Start)}";

    /// <summary>A performer where there is no room for the name: "H" for the hero, "A1", "A2" … for attackers in the order of the brief.</summary>
    public static string Sign(int attacker) => attacker < 0 ? "H" : "A" + Number(attacker + 1);

    /// <summary>Stands where the technique would, under an attack that the hero does nothing against.</summary>
    public const string Unanswered = "nothing answers it";

    /// <summary>What the two short forms mean, for the papers that use them.</summary>
    public const string Tags = "m4 is move 4; c12 is count 12, c12& the half count after it, and a move's count is that on which the hero starts.";

    /// <summary>How somebody gets into the fight, for the papers that speak of it: each word means one thing.</summary>
    public const string Entrances = "Enters: sets foot on the floor and walks to where they open. In play: stands there, and may attack or be attacked from that count on. Closes in: goes from there at the hero.";

    /// <summary>A span: "half a count", "1 count", "2.5 counts".</summary>
    public static string Span(HalfCounts span) => span.InWords;

    public static string Number(decimal value) => value.ToString("0.##", CultureInfo.InvariantCulture);

    public static string Number(int value) => value.ToString(CultureInfo.InvariantCulture);

    /// <summary>"1 point", "3 points".</summary>
    public static string Points(int points) => Number(points) + (points == 1 ? " point" : " points");

    /// <summary>"1 move", "3 moves".</summary>
    public static string Many(int number, string one) => Amounts.Many(number, one);
}
