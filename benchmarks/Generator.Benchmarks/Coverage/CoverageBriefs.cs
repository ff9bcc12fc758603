using System.Globalization;
using Generator.Domain;

namespace Generator.Benchmarks.Coverage;

/// <summary>Briefs of many kinds for the coverage run: drawn from a fixed seed, so that two runs compare.</summary>
internal static class CoverageBriefs
{
    private static readonly string[] Names = ["Bruno", "Wanda", "Piet", "Lotte", "Igor"];

    /// <summary>A brief without hero moments.</summary>
    public static Brief Free(int number)
    {
        var random = new Random(7000 + number);
        var cast = random.Next(1, 6);
        return new Brief
        {
            Title = string.Create(CultureInfo.InvariantCulture, $"Coverage {number}"),
            Tempo = new Tempo(random.Next(8, 11) * 10),
            Length = new Length((cast * 12) + random.Next(8, 20), null, 6),
            Floor = new FloorPlan { Width = new Centimetres(1200), Depth = new Centimetres(1200), MarkX = new Centimetres(600), MarkY = new Centimetres(600), Surface = random.Next(8) == 0 ? Surface.Hard : Surface.Matted },
            Hero = new HeroPart { Name = "Ines", Height = Height(random), Skill = random.Next(6) == 0 ? Skill.Trained : Skill.Stunt, Lead = random.Next(3) == 0 ? Side.Right : Side.Left },
            Attackers = [.. Enumerable.Range(0, cast).Select(a => new AttackerPart { Name = Names[a], Height = Height(random), Skill = random.Next(5) == 0 ? Skill.Trained : Skill.Stunt, Speed = random.Next(16, 31) * 10 })],
            Setbacks = random.Next(0, cast + 3),
            Pauses = random.Next(0, 3),
            Arc = (Arc)random.Next(4),
            Safety = Safety.Default with { Runs = 2 },
        };
    }

    /// <summary>A short fight of two or three stunt performers against a stunt hero in which one move is a hero moment, and nothing else is asked for.</summary>
    public static Brief Asking(MomentMove move, int number) => new()
    {
        Title = move.Technique,
        Length = new Length(14 + (number % 4 * 6), null, 6),
        Floor = new FloorPlan { Width = new Centimetres(1200), Depth = new Centimetres(1200), MarkX = new Centimetres(600), MarkY = new Centimetres(600) },
        Tempo = new Tempo(90),
        Attackers = [.. Names.Take(2 + (number % 2)).Select(n => new AttackerPart { Name = n, Skill = Skill.Stunt })],
        Moments = [new Moment([move], null, null)],
        Safety = Safety.Default with { Runs = 2 },
    };

    /// <summary>The same without a moment, with so many setbacks.</summary>
    public static Brief WithSetbacks(int setbacks, int number) => new()
    {
        Title = string.Create(CultureInfo.InvariantCulture, $"{setbacks} setbacks, {number}"),
        Length = new Length(20 + number, null, 6),
        Floor = new FloorPlan { Width = new Centimetres(1200), Depth = new Centimetres(1200), MarkX = new Centimetres(600), MarkY = new Centimetres(600) },
        Tempo = new Tempo(90),
        Attackers = [.. Names.Take(2 + (number % 2)).Select(n => new AttackerPart { Name = n, Skill = Skill.Stunt })],
        Setbacks = setbacks,
        Safety = Safety.Default with { Runs = 2 },
    };

    private static Centimetres Height(Random random) => new(random.Next(158, 193));
}
