namespace Generator.Figures.Painting;

/// <summary>With what a body is drawn, as attributes of SVG.</summary>
/// <param name="Outline">Of limbs, trunk and head.</param>
/// <param name="Cap">Of an attacker's cap.</param>
/// <param name="Belt">Of the hero's belt.</param>
/// <param name="Band">Of the bands of a left limb.</param>
internal sealed record Ink(string Outline, string Cap, string Belt, string Band)
{
    /// <summary>A picture by itself has its colours with it.</summary>
    public static (Ink Hero, Ink Attacker) Own { get; } = (Of("#2f3b52", "#ffffff", "#ffffff"), Of("#f6ead2", "#2b2b2b", "#2b2b2b"));

    /// <summary>On a page the page says what the classes look like: fh, fb and fn are the hero's outline, belt and bands, fa, fc and fd an attacker's outline, cap and bands.</summary>
    public static (Ink Hero, Ink Attacker) Page { get; } = (
        new("class=\"fh\"", string.Empty, "class=\"fb\"", "class=\"fn\""), new("class=\"fa\"", "class=\"fc\"", string.Empty, "class=\"fd\""));

    /// <summary>The place where they meet, in a picture by itself and on a page.</summary>
    public static (string Own, string Page) Meeting { get; } = ("fill=\"none\" stroke=\"#c8102e\" stroke-width=\"2.4\" stroke-linecap=\"round\"", "class=\"fm\"");

    private static Ink Of(string fill, string line, string mark) => new(
        $"fill=\"{fill}\" stroke=\"{line}\" stroke-width=\"1.2\" stroke-linejoin=\"round\"", $"fill=\"{mark}\" stroke=\"none\"", $"stroke=\"{mark}\" stroke-width=\"4\"", $"stroke=\"{mark}\" stroke-width=\"2.6\"");
}
