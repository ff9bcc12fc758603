using System.Globalization;
using Generator.Domain;

namespace Generator.Rules.Tests.Fights;

/// <summary>
/// Reads the start of a fight: a stance, then <c>Name@clock/cm</c>, <c>Name@clock/cm/half counts</c> for somebody who comes in later, <c>Name@clock/cm/left-knee</c> for somebody who opens on it, and any of
/// <c>tempo=</c>, <c>hero=</c> (skill), <c>surface=</c>, <c>camera=</c> (clock).
/// </summary>
internal static class StartText
{
    public static (Brief Brief, IReadOnlyList<Placement> Placements) Read(string text)
    {
        var brief = new Brief
        {
            Attackers = [],
            Hero = new HeroPart { Name = "Ines", Skill = Skill.Stunt },
            Floor = new FloorPlan { Width = new(1200), Depth = new(1200), MarkX = new(600), MarkY = new(600) },
        };
        var placements = new List<Placement>();
        foreach (var word in text.Split(' '))
        {
            brief = Word(brief, word, placements);
        }

        return (brief, placements);
    }

    public static Bearing Clock(string text) => Bearing.TryParse(text, out var bearing) ? bearing : throw new FormatException($"'{text}' is no clock position.");

    public static int Number(string text) => int.Parse(text, CultureInfo.InvariantCulture);

    private static Brief Word(Brief brief, string word, List<Placement> placements)
    {
        var parts = word.Split('=', '@', '/');
        switch (parts[0])
        {
            case "left-lead":
                return brief with { Hero = brief.Hero with { Lead = Side.Left } };
            case "right-lead":
                return brief with { Hero = brief.Hero with { Lead = Side.Right } };
            case "square":
                return brief with { Hero = brief.Hero with { Lead = null } };
            case "kneeling-left":
                return brief with { Hero = brief.Hero with { Kneels = Side.Left } };
            case "kneeling-right":
                return brief with { Hero = brief.Hero with { Kneels = Side.Right } };
            case "tempo":
                return brief with { Tempo = new Tempo(Number(parts[1])) };
            case "hero":
                return brief with { Hero = brief.Hero with { Skill = Enum.Parse<Skill>(parts[1], ignoreCase: true) } };
            case "surface":
                return brief with { Floor = brief.Floor with { Surface = Enum.Parse<Surface>(parts[1], ignoreCase: true) } };
            case "camera":
                return brief with { Cameras = [.. brief.Cameras, new Camera("Camera " + parts[1], Clock(parts[1]), new(500), new(150))] };
            default:
                var knee = parts.Length > 3 && parts[3] == "left-knee" ? Side.Left : (Side?)null;
                placements.Add(new Placement(Clock(parts[1]), new Centimetres(Number(parts[2])), new HalfCounts(parts.Length > 3 && knee is null ? Number(parts[3]) : 0)));
                return brief with { Attackers = [.. brief.Attackers, new AttackerPart { Name = parts[0], Skill = Skill.Stunt, Kneels = knee }] };
        }
    }
}
