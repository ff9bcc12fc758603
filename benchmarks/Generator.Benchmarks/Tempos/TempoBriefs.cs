using System.Globalization;
using Generator.Domain;

namespace Generator.Benchmarks.Tempos;

/// <summary>Briefs for the tempo run: drawn from a fixed seed, so that two runs compare; each is drafted at a slow and at a fast tempo.</summary>
internal static class TempoBriefs
{
    private static readonly string[] Names = ["Bruno", "Wanda", "Piet", "Lotte", "Igor"];

    /// <summary>The tempo at or below 100 at which a brief is drafted.</summary>
    public static Tempo Slow(int number) => new(60 + (number % 5 * 10));

    /// <summary>The tempo above 100, up to 180.</summary>
    public static Tempo Fast(int number) => new(110 + (number % 8 * 10));

    /// <summary>12 to 40 moves against one to five; in every third brief somebody is a novice.</summary>
    public static Brief Of(int number, Tempo tempo)
    {
        var random = new Random(9000 + number);
        var cast = random.Next(1, 6);
        var novices = number % 3 == 0;
        return new Brief
        {
            Title = string.Create(CultureInfo.InvariantCulture, $"Tempo {number}"),
            Tempo = tempo,
            Length = new Length(null, Math.Max(random.Next(12, 41), 5 * cast), 2),
            Floor = new FloorPlan { Width = new Centimetres(1200), Depth = new Centimetres(1200), MarkX = new Centimetres(600), MarkY = new Centimetres(600), Surface = random.Next(3) == 0 ? Surface.Hard : Surface.Matted },
            Hero = new HeroPart { Name = "Ines", Height = Height(random), Skill = random.Next(2) == 0 ? Skill.Trained : Skill.Stunt },
            Attackers = [.. Enumerable.Range(0, cast).Select(a => new AttackerPart { Name = Names[a], Height = Height(random), Skill = SkillOf(random, novices && a == 0), Speed = random.Next(16, 31) * 10 })],
            Setbacks = random.Next(0, 3),
            Pauses = random.Next(0, 2),
            Arc = (Arc)random.Next(4),
        };
    }

    private static Skill SkillOf(Random random, bool novice)
    {
        var skill = random.Next(2) == 0 ? Skill.Trained : Skill.Stunt;
        return novice ? Skill.Novice : skill;
    }

    private static Centimetres Height(Random random) => new(random.Next(158, 193));
}
