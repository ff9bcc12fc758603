using System.Collections.Concurrent;
using Generator.Domain;
using Generator.Library;
using Generator.Library.Loading;
using Generator.Rules;
using Generator.Solver.Constructing;
using Generator.Solver.Questions;
using Generator.Testing;

namespace Generator.Solver.Tests.Constructing;

/// <summary>Briefs to draft with the library that comes with the program, and how to draft them.</summary>
internal static class Drafts
{
    private static readonly string[] Names = ["Bruno", "Wanda", "Piet"];

    private static readonly Lazy<Book> Loaded = new(() =>
    {
        var read = LibraryLoader.LoadBundled();
        return read.Value ?? throw new InvalidOperationException(read.ToText());
    });

    private static readonly ConcurrentDictionary<int, Lazy<DraftResult>> OfSmallBriefs = [];

    private static readonly ConcurrentDictionary<int, Lazy<DraftResult>> OfPlainBriefs = [];

    public static Book Book => Loaded.Value;

    /// <summary>What a search that ends by itself is given, on whatever machine: only one that hangs takes it.</summary>
    public static readonly TimeSpan Hang = TimeSpan.FromMinutes(20);

    /// <summary>A small brief that makes sense, from its seed.</summary>
    public static Brief Small(int seed)
    {
        var chance = new Chance(seed);
        var cast = chance.Whole(1, 3);
        var counts = chance.Whole(8 * cast, 30);
        return new Brief
        {
            Tempo = new Tempo(chance.Whole(80, 120)),
            Length = chance.Percent(70) ? new Length(counts, null, 4) : new Length(null, counts / 2, 2),
            Attackers = [.. Names.Take(cast).Select((n, i) => Attacker(chance, n, i * Bearing.Circle / cast))],
            Arc = chance.Any<Arc>(),
            Setbacks = chance.Maybe(() => chance.Whole(0, 1)),
            Pauses = chance.Maybe(() => chance.Whole(0, 1)),
            Cameras = chance.List(0, 2, i => new Camera("camera " + i, new Bearing(12 * i), new Centimetres(500), new Centimetres(150))),
        };
    }

    /// <summary>Two trained attackers and a length of 24 counts.</summary>
    public static Brief Plain(params IReadOnlyList<Moment> moments) => new()
    {
        Length = new Length(24, null, 4),
        Attackers = [new AttackerPart { Name = "Bruno", Skill = Skill.Stunt }, new AttackerPart { Name = "Wanda" }],
        Moments = moments,
    };

    /// <summary>Four who are in from the start and may neither wait nor linger: somebody always has to wait, which costs points.</summary>
    public static Brief NeverDone => new()
    {
        Acts = [],
        Length = new Length(48, null, 4),
        Pace = Pace.Default with { Patience = HalfCounts.Zero, Linger = HalfCounts.Zero },
        Attackers = [.. new[] { "Bruno", "Wanda", "Piet", "Lotte" }.Select((n, i) => new AttackerPart { Name = n, Bearing = new Bearing(6 * i), Distance = new Centimetres(200), Entrance = HalfCounts.Zero })],
    };

    /// <summary>A draft that ends by so much work and not by the clock, so that a busy machine finds what an idle one does.</summary>
    public static DraftResult Rounds(Brief brief, int seed, int rounds = 6) =>
        Drafting.Draft(brief, Book, new DraftOptions { Seed = seed, Rounds = rounds, Time = TimeSpan.FromHours(1) });

    /// <summary>A draft that ends at no points, or after more work than nearly any brief needs.</summary>
    public static DraftResult Draft(Brief brief, int seed = 1) => Rounds(brief, seed, 20);

    /// <summary>The draft of a small brief with its own seed, searched once for all tests that only need some routine.</summary>
    public static DraftResult OfSmall(int seed) => OfSmallBriefs.GetOrAdd(seed, s => new Lazy<DraftResult>(() => Rounds(Small(s), s))).Value;

    /// <summary>A routine for the plain brief, searched once for all tests.</summary>
    public static Routine OfPlain(int seed) => OfPlainBriefs.GetOrAdd(seed, s => new Lazy<DraftResult>(() => Draft(Plain(), s))).Value.Routine!;

    /// <summary>As it is done for users, for briefs of which a proof or a routine is sure to end it: the time is only there in case it hangs.</summary>
    public static DraftResult Ended(Brief brief) => Drafting.Draft(brief, Book, new DraftOptions { Time = Hang });

    /// <summary>The first routine of so many beams, one after the other; it is clean.</summary>
    /// <exception cref="InvalidOperationException">None of them came to an end.</exception>
    public static Routine First(Scene scene, int rounds)
    {
        var ground = new Ground(scene);
        for (var round = 0; round < rounds; round++)
        {
            var dice = new Dice(Dice.SeedOf(1, 0, round));
            using var first = new CancellationTokenSource();
            if (OpeningPlaces.Choose(ground, dice) is { } placements && new Beam(ground, dice, 12, 1, int.MaxValue).Run(ground.Openings(placements), _ => first.Cancel(), first.Token) is { } finish)
            {
                var (routine, verdict) = Draftsman.Write(scene, finish);
                Assert.True(verdict.IsClean);
                return routine;
            }
        }

        throw new InvalidOperationException($"Nothing was found in {rounds} rounds.");
    }

    private static AttackerPart Attacker(Chance chance, string name, int bearing) => new()
    {
        Name = name,
        Skill = chance.One([Skill.Trained, Skill.Stunt]),
        Speed = chance.Whole(120, 400),
        Bearing = chance.Percent(50) ? new Bearing(bearing + chance.Whole(-1, 1)) : null,
        Distance = chance.Percent(50) ? new Centimetres(chance.Whole(150, 350)) : null,
        Entrance = chance.Percent(20) ? new HalfCounts(chance.Whole(0, 10)) : null,
        Limits = chance.Some(["no-back-fall", "no-thrown-over-fall"], 20),
    };
}
