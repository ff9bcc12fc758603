using Generator.Domain;
using Generator.Library;
using Generator.Library.Files;
using Generator.Library.Reading;
using Generator.Paperwork;
using Generator.Rules;
using Generator.Rules.Sight;
using Generator.Solver;
using Generator.Solver.Questions;
using Generator.Testing;

namespace Generator.Cli.Tests.Papers;

/// <summary>Routines to read papers of, and the papers, made once for all tests.</summary>
internal static class Made
{
    /// <summary>How many routines are looked at: half of them drafted, half put together at random.</summary>
    public const int Routines = 40;

    public static Book Book { get; } = Rig.Book;

    private static readonly Lazy<IReadOnlyList<Routine>> DraftsMade = new(() => [.. Enumerable.Range(1, 200).Select(Draft).OfType<Routine>().Take(Routines / 2)]);

    private static readonly Lazy<IReadOnlyList<PaperPack>> PacksMade = new(() => [.. Drafts.Concat(Enumerable.Range(1, 200).Select(s => RandomRoutine.Of(s, Book)).Where(IsInOrder).Take(Routines / 2)).Select(Pack)]);

    private static readonly Lazy<PaperPack> FerryMade = new(() => Pack(FerryRoutine));

    private static readonly Lazy<DraftResult> InnDrafted = new(() => Drafting.Draft(BundledScenario.All[1].BriefBy(Book), Book, new DraftOptions { Rounds = 4, Time = TimeSpan.FromHours(1) }));

    private static readonly Lazy<PaperPack> InnMade = new(() => Pack(InnDraft.Routine!));

    public static IReadOnlyList<Routine> Drafts => DraftsMade.Value;

    /// <summary>The papers of all routines.</summary>
    public static IReadOnlyList<PaperPack> Packs => PacksMade.Value;

    public static Routine FerryRoutine => RoutineReader.Parse(new SourceFile("ferry.routine.json", File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Data", "ferry.routine.json"))), Book, null).Value!;

    public static PaperPack Ferry => FerryMade.Value;

    /// <summary>The draft of the second scenario of the program.</summary>
    public static DraftResult InnDraft => InnDrafted.Value;

    /// <summary>The second scenario of the program, with marks, things and props.</summary>
    public static PaperPack Inn => InnMade.Value;

    public static PaperPack Pack(Routine routine)
    {
        var source = PaperSource.Of(new Scene(routine.Brief, Book), routine);
        source = source.With(PaperOptions.Default with { From = new DateOnly(2027, 3, 15), Cameras = new CameraPlan(Hit.Of(source.Scene, source.Steps), source.Brief.Cameras, []) });
        return new PaperPack(source, Paperwork.Pack.Of(source).ToDictionary(
            p => p.FileName,
            p =>
            {
                using var stream = new MemoryStream();
                p.Write(source, stream);
                return stream.ToArray();
            },
            StringComparer.Ordinal));
    }

    private static bool IsInOrder(Routine routine) => routine.Moves.Count > 0 && routine.Moves.Zip(routine.Moves.Skip(1)).All(m => m.First.Start <= m.Second.Start);

    private static Routine? Draft(int seed)
    {
        var chance = new Chance(seed);
        string[] names = ["Bruno", "Wanda", "Piet", "Ama"];
        var cast = chance.Whole(1, 4);
        var brief = new Brief
        {
            Title = "Fight " + seed,
            Tempo = new Tempo(chance.Whole(70, 120)),
            Length = new Length(null, 4 + (cast * chance.Whole(3, 6)), 2),
            Hero = new HeroPart { Name = "Ines", Skill = Skill.Stunt },
            Attackers = [.. names.Take(cast).Select(n => new AttackerPart { Name = n, Skill = chance.One([Skill.Trained, Skill.Stunt]), Entrance = chance.Percent(25) ? new HalfCounts(chance.Whole(2, 12)) : null })],
            Cameras = chance.List(0, 2, i => new Camera("camera " + i, new Bearing(chance.Whole(0, 23)), new Centimetres(500), new Centimetres(150))),
            Setbacks = chance.Maybe(() => chance.Whole(0, 1)),
        };
        return Drafting.Draft(brief, Book, new DraftOptions { Seed = seed, Rounds = 1, Time = TimeSpan.FromHours(1) }).Routine;
    }
}
