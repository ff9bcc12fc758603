using Generator.Domain;

namespace Generator.Benchmarks.Stored;

/// <summary>Draws the tight and the loose briefs. A tight one is tightened further round a routine by <see cref="Tightening"/>.</summary>
internal static class FamilyBriefs
{
    private static readonly string[] Names = ["Bruno", "Wanda", "Piet", "Lotte", "Igor", "Maren", "Koen", "Tessa"];

    private static readonly string[] AttackerLimits =
        [Limit.On(FallClass.ThrownOver), Limit.On(FallClass.Back), Limit.On(FallClass.Forward), Limit.On(Demand.Jump), Limit.On(Demand.HighKick)];

    private static readonly string[] HeroLimits = [Limit.On(Demand.Jump), Limit.On(Demand.Floor), Limit.On(Demand.HighKick), Limit.On(Demand.Kneel)];

    /// <summary>Plenty: a wide floor, eight counts either way, two runs a day, stunt performers only, five counts of patience, nothing asked for but the length.</summary>
    public static Brief Loose(Family family, string title, Random random)
    {
        var width = random.Next(13, 17) * 100;
        var depth = random.Next(13, 17) * 100;
        return new Brief
        {
            Title = title,
            Tempo = new Tempo(random.Next(9, 11) * 10),
            Length = random.Next(2) == 0 ? new Length(family.Moves * 22 / 10, null, 8) : new Length(null, family.Moves, 2),
            Floor = new FloorPlan { Width = new Centimetres(width), Depth = new Centimetres(depth), MarkX = new Centimetres(width / 2), MarkY = new Centimetres(depth / 2) },
            Hero = new HeroPart { Name = "Ines", Height = Height(random), Skill = Skill.Stunt, Lead = random.Next(4) == 0 ? Side.Right : Side.Left },
            Attackers = [.. Cast(family).Select(n => new AttackerPart { Name = n, Height = Height(random), Skill = Skill.Stunt, Speed = random.Next(20, 35) * 10 })],
            Setbacks = 0,
            Pauses = 0,
            Pace = Pace.Default with { Patience = HalfCounts.FromCounts(5), Linger = HalfCounts.FromCounts(8) },
            Safety = Safety.Default with { Runs = 2 },
            Ending = new Ending([.. Cast(family)], null),
        };
    }

    /// <summary>
    /// As tight as a routine can still be looked for in a minute: a small floor with obstacles, limits, two counts of margin, three of patience, a setback for every
    /// twenty moves, a pause, cameras, an arc. Length, hero moments and ending follow from a routine.
    /// </summary>
    public static Brief Tight(Family family, string title, Random random)
    {
        var width = (random.Next(8, 10) * 100) + (family.Attackers > 5 ? 100 : 0);
        var depth = (random.Next(8, 10) * 100) + (family.Attackers > 5 ? 100 : 0);
        return new Brief
        {
            Title = title,
            Tempo = Tempo.Default,
            Length = new Length(null, family.Moves, 1),
            Floor = new FloorPlan
            {
                Width = new Centimetres(width),
                Depth = new Centimetres(depth),
                MarkX = new Centimetres(width / 2),
                MarkY = new Centimetres(depth / 2),
                Obstacles = [.. Obstacles(width, depth, random)],
            },
            Hero = new HeroPart { Name = "Ines", Height = Height(random), Skill = Skill.Stunt, Lead = random.Next(4) == 0 ? Side.Right : Side.Left, Limits = [Pick(HeroLimits, random)] },
            Attackers = [.. Cast(family).Select((n, a) => Attacker(n, a, random))],
            Cameras = [new Camera("A", new Bearing(random.Next(24)), new Centimetres(600), new Centimetres(150)), .. random.Next(2) == 0 ? new[] { new Camera("B", new Bearing(random.Next(24)), new Centimetres(600), new Centimetres(150)) } : []],
            Arc = random.Next(2) == 0 ? Arc.Rising : Arc.TwoPeaks,
            Setbacks = Math.Max(1, family.Moves / 20),
            Pauses = 1,
            Pace = Pace.Default with { Patience = HalfCounts.FromCounts(3) },
            Safety = Safety.Default with { Margin = HalfCounts.FromCounts(2), Runs = random.Next(4, 7) },
            Ending = new Ending([.. Cast(family)], null),
        };
    }

    private static IEnumerable<string> Cast(Family family) => Names.Take(family.Attackers);

    private static AttackerPart Attacker(string name, int number, Random random) => new()
    {
        Name = name,
        Height = Height(random),
        Skill = number == 0 || random.Next(2) == 0 ? Skill.Stunt : Skill.Trained,
        Speed = random.Next(14, 31) * 10,
        Limits = random.Next(2) == 0 ? [Pick(AttackerLimits, random)] : [],
    };

    /// <summary>Two things by the edges, in two corners that are not the same.</summary>
    private static IEnumerable<Obstacle> Obstacles(int width, int depth, Random random)
    {
        var corner = random.Next(4);
        foreach (var (name, at) in new[] { ("bollard", corner), ("winch", (corner + 1 + random.Next(3)) % 4) })
        {
            var (wide, deep) = (random.Next(5, 12) * 10, random.Next(5, 12) * 10);
            var x = at % 2 == 0 ? random.Next(0, 6) * 10 : width - wide - (random.Next(0, 6) * 10);
            var y = at < 2 ? random.Next(0, 6) * 10 : depth - deep - (random.Next(0, 6) * 10);
            yield return new Obstacle(name, new Centimetres(x), new Centimetres(y), new Centimetres(wide), new Centimetres(deep));
        }
    }

    private static T Pick<T>(T[] items, Random random) => items[random.Next(items.Length)];

    private static Centimetres Height(Random random) => new(random.Next(158, 193));
}
