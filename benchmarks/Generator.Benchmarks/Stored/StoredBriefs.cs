using System.Globalization;
using Generator.Domain;
using Generator.Library.Files;

namespace Generator.Benchmarks.Stored;

/// <summary>
/// The first of the stored briefs: twenty random ones of each size (moves x attackers), drawn once from a fixed seed and kept as files, so that results
/// of different days can be compared.
/// </summary>
internal static class StoredBriefs
{
    private const int EachSize = 20;

    private static readonly IReadOnlyList<(int Moves, int Attackers)> Sizes = [(12, 2), (24, 3), (40, 4)];

    private const int Seed = 20260;

    private static readonly string[] Names = ["Bruno", "Wanda", "Piet", "Lotte"];

    private static readonly string[] Favourites = ["hip-throw", "outside-reap", "high-round-kick", "spinning-back-fist", "leg-catch", "wrist-throw"];

    private static string SizeText((int Moves, int Attackers) size) => string.Create(CultureInfo.InvariantCulture, $"{size.Moves}x{size.Attackers}");

    /// <summary>Writes them all.</summary>
    public static void Write()
    {
        Directory.CreateDirectory(Places.Briefs);
        foreach (var size in Sizes)
        {
            for (var i = 1; i <= EachSize; i++)
            {
                var name = string.Create(CultureInfo.InvariantCulture, $"{SizeText(size)}-{i:00}");
                File.WriteAllText(Path.Combine(Places.Briefs, name + ".brief.json"), BriefWriter.Text(Draw(name, size, new Random(Seed + (size.Moves * 100) + i))));
            }
        }
    }

    private static Brief Draw(string title, (int Moves, int Attackers) size, Random random)
    {
        var width = random.Next(9, 14) * 100;
        var depth = random.Next(9, 14) * 100;
        var attackers = Enumerable.Range(0, size.Attackers).Select(a => Attacker(a, random)).ToList();
        return new Brief
        {
            Title = title,
            // Not above 100, where the longer throws would have too little time.
            Tempo = new Tempo(random.Next(9, 11) * 10),
            // Half of them by counts, as long as so many moves usually take; half by moves.
            Length = random.Next(2) == 0 ? new Length(size.Moves * 22 / 10, null, 4) : new Length(null, size.Moves, 1),
            Floor = new FloorPlan { Width = new Centimetres(width), Depth = new Centimetres(depth), MarkX = new Centimetres(width / 2), MarkY = new Centimetres(depth / 2) },
            Hero = new HeroPart { Name = "Ines", Height = Height(random), Skill = Skill.Stunt, Lead = random.Next(4) == 0 ? Side.Right : Side.Left },
            Attackers = attackers,
            Cameras = random.Next(2) == 0 ? [] : [new Camera("A", new Bearing(random.Next(24)), new Centimetres(600), new Centimetres(150))],
            Moments = random.Next(2) == 0 ? [] : [Moment(size, attackers, random)],
            Arc = (Arc)random.Next(4),
            Setbacks = random.Next(size.Attackers),
            Pauses = random.Next(2),
            Safety = Safety.Default with { Runs = random.Next(2, 7) },
            Ending = new Ending([.. attackers.Select(a => a.Name)], random.Next(3) == 0 ? attackers[random.Next(attackers.Count)].Name : null),
        };
    }

    private static AttackerPart Attacker(int number, Random random)
    {
        var placed = random.Next(2) == 0;
        return new AttackerPart
        {
            Name = Names[number],
            Height = Height(random),
            // The first is always able to take the big falls, so that a moment can be theirs.
            Skill = number == 0 || random.Next(2) == 0 ? Skill.Stunt : Skill.Trained,
            Speed = random.Next(14, 31) * 10,
            Bearing = placed ? new Bearing((number * 6) + random.Next(3)) : null,
            Distance = placed ? new Centimetres(random.Next(20, 36) * 10) : null,
            Limits = number > 0 && random.Next(4) == 0 ? [Limit.On(FallClass.ThrownOver)] : [],
        };
    }

    private static Moment Moment((int Moves, int Attackers) size, List<AttackerPart> attackers, Random random)
    {
        // Somewhere past the middle, within a window of a quarter of the routine.
        var counts = size.Moves * 22 / 10;
        var from = HalfCounts.FromCounts(counts / 2);
        return new Moment([new MomentMove(Favourites[random.Next(Favourites.Length)], attackers[0].Name, null, null)], from, from + HalfCounts.FromCounts(counts / 4));
    }

    private static Centimetres Height(Random random) => new(random.Next(158, 193));
}
