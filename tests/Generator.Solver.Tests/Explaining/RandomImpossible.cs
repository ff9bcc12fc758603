using Generator.Domain;
using Generator.Testing;

namespace Generator.Solver.Tests.Explaining;

/// <summary>Small briefs of which one thing asks for more than another lets be, each from its seed.</summary>
internal static class RandomImpossible
{
    private static readonly string[] Names = ["Bruno", "Wanda", "Piet", "Lotte", "Ada", "Cleo"];

    /// <summary>Ways to ask for too much.</summary>
    private static readonly IReadOnlyList<Func<Brief, Chance, Brief>> Spoils =
    [
        (b, c) => b with { Length = new Length(c.Whole(4, 6), null, 0), Setbacks = c.Whole(4, 6) },
        (b, c) => b with { Length = new Length(null, c.Whole(1, 2), 0), Setbacks = 1, Pauses = 2 },
        (b, c) => b with { Length = new Length(c.Whole(6, 12), c.Whole(40, 90), 0) },
        (b, c) => b with { Length = new Length(c.Whole(4, 6), null, 0), Attackers = [.. Names.Take(c.Whole(4, 6)).Select(n => new AttackerPart { Name = n })] },
        (b, c) => Throw(b, c, a => a with { FallsPerRun = 0 }),
        (b, c) => Throw(b, c, a => a with { Limits = ["no-back-fall"] }),
        (b, c) => Throw(b, c, a => a) with { Floor = new FloorPlan { Surface = c.One([Surface.Wet, Surface.Hard]) } },
        (b, c) => Throw(b, c, a => a) with { Hero = b.Hero with { Skill = Skill.Novice }, Safety = b.Safety with { FallsPerDay = 0 } },
        (b, c) => Asking(b, c, "high-round-kick") with { Hero = b.Hero with { Limits = ["no-high-kick"], Skill = Skill.Stunt } },
        (b, c) => Asking(b, c, "hugged-from-behind") with { Setbacks = 0 },
        (b, c) => b with { Length = new Length(20, null, 0), Attackers = [b.Attackers[0] with { Entrance = new HalfCounts(c.Whole(36, 38)) }, .. b.Attackers.Skip(1)] },
        (b, c) => Asking(b, c, "outside-reap", new HalfCounts(4), new HalfCounts(8)) with { Attackers = [b.Attackers[0] with { Entrance = new HalfCounts(16) }, .. b.Attackers.Skip(1)] },
        (b, c) => b with { Floor = new FloorPlan { Width = new(c.Whole(160, 220)), Depth = new(c.Whole(160, 220)), MarkX = new(80), MarkY = new(80) }, Attackers = [.. Names.Take(c.Whole(4, 6)).Select(n => new AttackerPart { Name = n })] },
        (b, c) => b with { Attackers = [Placed("Bruno", 2 * c.Whole(0, 11), 200), Placed("Wanda", (2 * c.Whole(0, 11)) + 1, 200), Placed("Piet", 0, 150), Placed("Lotte", 1, 150)] },
    ];

    public static Brief Of(int seed)
    {
        var chance = new Chance(seed);
        var cast = chance.Whole(1, 3);
        var brief = new Brief
        {
            Tempo = new Tempo(chance.One([90, 100, 110, 126])),
            Length = new Length(12 * cast, null, 4),
            Attackers = [.. Names.Take(cast).Select(n => new AttackerPart { Name = n, Skill = chance.One([Skill.Trained, Skill.Stunt]) })],
        };
        return Spoils[seed % Spoils.Count](brief, chance);
    }

    private static Brief Throw(Brief brief, Chance chance, Func<AttackerPart, AttackerPart> first) =>
        Asking(brief with { Attackers = [first(brief.Attackers[0]), .. brief.Attackers.Skip(1)] }, chance, "outside-reap");

    private static Brief Asking(Brief brief, Chance chance, string technique, HalfCounts? from = null, HalfCounts? to = null) => brief with
    {
        Hero = brief.Hero with { Skill = chance.One([Skill.Trained, Skill.Stunt]) },
        Moments = [new Moment([new MomentMove(technique, "Bruno", null, null)], from, to)],
    };

    private static AttackerPart Placed(string name, int bearing, int distance) => new() { Name = name, Bearing = new Bearing(bearing), Distance = new Centimetres(distance) };
}
