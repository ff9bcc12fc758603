using System.Globalization;
using Generator.Domain;
using Generator.Library.Reading;

namespace Generator.Library.Files.Notes;

/// <summary>What a line about a performer says: "the hero, left lead, 1.70 m", "2:30, 3 m, fast, late".</summary>
internal sealed record CastWords
{
    /// <summary>Speeds that "slow" and "fast" stand for, in centimetres a second: a walk and a rush.</summary>
    private const int Slow = 140, Fast = 300;

    /// <summary>Somebody who comes late is not in play before this count; the engine may put it off further.</summary>
    private const int LateCount = 9;

    public bool IsHero { get; init; }

    public Side? Lead { get; init; }

    public Centimetres? Height { get; init; }

    public Bearing? Bearing { get; init; }

    public Centimetres? Distance { get; init; }

    public int? Speed { get; init; }

    public bool IsLate { get; init; }

    public Skill? Skill { get; init; }

    /// <summary>Moment of entrance of who comes late.</summary>
    public HalfCounts? Entrance => IsLate ? new HalfCounts((LateCount - 1) * HalfCounts.PerCount) : null;

    /// <summary>Reads a whole line; null when any part of it is something else, such as an attack.</summary>
    public static CastWords? Parse(string text)
    {
        var said = new CastWords();
        foreach (var part in text.Split(',', StringSplitOptions.TrimEntries))
        {
            if (With(said, part) is not { } more)
            {
                return null;
            }

            said = more;
        }

        return said.IsHero || said.Height is null ? said : said with { Height = null, Distance = said.Height };
    }

    private static CastWords? With(CastWords said, string part)
    {
        var word = part.ToLowerInvariant();
        return word switch
        {
            "the hero" or "hero" => said with { IsHero = true },
            "left lead" => said with { Lead = Side.Left },
            "right lead" => said with { Lead = Side.Right },
            "fast" => said with { Speed = Fast },
            "slow" => said with { Speed = Slow },
            "late" => said with { IsLate = true },
            _ when EnumWords.TryParse<Skill>(word, out var skill) => said with { Skill = skill },
            _ when Domain.Bearing.TryParse(word.Replace(" o'clock", string.Empty, StringComparison.Ordinal), out var bearing) => said with { Bearing = bearing },
            _ when Metres(word) is { } metres => said with { Height = metres },
            _ => null,
        };
    }

    private static Centimetres? Metres(string word) =>
        word.EndsWith(" m", StringComparison.Ordinal) && decimal.TryParse(word[..^2], NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var metres) && metres is > 0 and < 30
            ? new Centimetres((int)Math.Round(metres * 100)) : null;
}
