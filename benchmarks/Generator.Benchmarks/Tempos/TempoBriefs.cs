using System.Globalization;
using Generator.Domain;

namespace Generator.Benchmarks.Tempos;

/// <summary>Briefs for the tempo run: drawn from a fixed seed, so that two runs compare; each is drafted at a slow and at a fast tempo.</summary>
internal static class TempoBriefs
{
    private static readonly string[] Names = ["Bruno", "Wanda", "Piet", "Lotte", "Igor"];

    private static readonly string[] Injuries = ["injured-right-knee", "injured-left-wrist", "injured-neck", "no-back-fall", "no-jump"];

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

    /// <summary>
    /// The same on a floor of 5 to 9 m whose mark need not be in the middle, any surface, with novices and injured people among them, the hero too, lengths in counts or moves, a
    /// camera or two, few falls and hits a run, and little patience.
    /// </summary>
    public static Brief Rougher(int number, Tempo tempo)
    {
        var (random, brief) = (new Random(19000 + number), Of(number, tempo));
        var (width, depth) = (random.Next(50, 91) * 10, random.Next(50, 91) * 10);
        return brief with
        {
            Length = random.Next(2) == 0 ? brief.Length : new Length(Math.Max(random.Next(16, 61), 8 * brief.Attackers.Count), null, 4),
            Floor = new FloorPlan { Width = new Centimetres(width), Depth = new Centimetres(depth), MarkX = new Centimetres(width * random.Next(40, 61) / 100), MarkY = new Centimetres(depth * random.Next(40, 61) / 100), Surface = (Surface)random.Next(5) },
            Hero = brief.Hero with { Skill = (Skill)random.Next(3), Limits = Limits(random) },
            Attackers = [.. brief.Attackers.Select(a => a with { Skill = (Skill)random.Next(3), Limits = Limits(random), Speed = random.Next(10, 31) * 10 })],
            Cameras = [.. Enumerable.Range(0, random.Next(3)).Select(c => new Camera("camera " + c, new Bearing(random.Next(Bearing.Circle)), new Centimetres(600), new Centimetres(150)))],
            Pace = brief.Pace with { Patience = new HalfCounts(random.Next(4, 13)) },
            Safety = brief.Safety with { Runs = random.Next(1, 13) },
        };
    }

    private static string[] Limits(Random random) => random.Next(6) > 0 ? [] : [Injuries[random.Next(Injuries.Length)]];

    private static Skill SkillOf(Random random, bool novice)
    {
        var skill = random.Next(2) == 0 ? Skill.Trained : Skill.Stunt;
        return novice ? Skill.Novice : skill;
    }

    private static Centimetres Height(Random random) => new(random.Next(158, 193));
}
