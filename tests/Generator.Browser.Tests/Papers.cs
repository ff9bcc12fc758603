using Generator.Domain;
using Generator.Figures.Poses;
using Generator.Figures.Posing;
using Generator.Library;
using Generator.Library.Files;
using Generator.Library.Loading;
using Generator.Library.Reading;
using Generator.Paperwork;
using Generator.Rules;
using Generator.Rules.Sight;

namespace Generator.Browser.Tests;

/// <summary>The pages that the tests open, written once into a folder of their own.</summary>
public sealed class Papers : IDisposable
{
    /// <summary>A hand-written fight of three phrases with falls, a walk round the clock, findings and a camera.</summary>
    private const string Yard = """
        {
          "brief": {
            "title": "Behind the cinema",
            "hero": { "name": "Zora", "height": 1.70, "skill": "stunt" },
            "floor": { "width": 8, "depth": 7, "mark": [4, 3.5], "obstacles": [ { "name": "bench", "x": 1, "y": 1, "width": 1.2, "depth": 0.5 } ] },
            "attackers": [ { "name": "Bruno", "height": 1.86 }, { "name": "Wanda", "height": 1.70 }, { "name": "Piet" } ],
            "cameras": [ { "name": "A", "bearing": "6", "distance": 5, "height": 1.5 } ]
          },
          "attackers": [ { "name": "Bruno", "bearing": "12", "distance": 2 }, { "name": "Wanda", "bearing": "2:30", "distance": 3 }, { "name": "Piet", "bearing": "9", "distance": 3, "entrance": 8 } ],
          "moves": [
            { "count": 1, "attacker": "Bruno", "attack": "swing-right", "technique": "parry-down-left", "reaction": "head-drops" },
            { "count": 2, "attacker": "Bruno", "technique": "knee-to-head-right", "reaction": "staggers-back", "linger": 2 },
            { "count": "4&", "attacker": "Wanda", "attack": "cross-right", "technique": "parry-down-left", "reaction": "limb-swept-in" },
            { "count": 6, "attacker": "Wanda", "technique": "finishing-hook-right", "reaction": "out-crumples" },
            { "count": 9, "attacker": "Piet", "attack": "swing-right", "technique": "parry-down-left", "reaction": "head-drops" },
            { "count": 10, "attacker": "Piet", "technique": "knee-to-head-right", "reaction": "staggers-back" },
            { "count": 14, "attacker": "Bruno", "from": "1", "attack": "swing-right", "technique": "parry-down-left", "reaction": "head-drops" },
            { "count": 15, "attacker": "Bruno", "technique": "finishing-hook-right", "reaction": "out-crumples" }
          ]
        }
        """;

    public Papers() => Directory.CreateDirectory(Folder);

    public string Folder { get; } = Path.Combine(Path.GetTempPath(), "generator-pages-" + Path.GetRandomFileName());

    public static Book Book { get; } = LibraryLoader.LoadBundled([]).Value!;

    /// <summary>What draws the figures of all papers.</summary>
    public static Cards Cards => Figures.Value;

    private static readonly Lazy<Cards> Figures = new(() => new Cards(PoseReader.LoadBundled(Book).Value!, Book));

    /// <summary>Writes the pack of the yard and returns the path of one of its files.</summary>
    public string Of(string file) => Of("yard", YardRoutine, file);

    public static Routine YardRoutine
    {
        get
        {
            var read = RoutineReader.Parse(new SourceFile("yard.routine.json", Yard), Book, null);
            return read.Value ?? throw new InvalidOperationException(read.ToText());
        }
    }

    /// <summary>Eight attackers on a small floor and seventy moves; nobody says that it is a good fight.</summary>
    public static Routine Crowd
    {
        get
        {
            var yard = YardRoutine;
            string[] names = ["Bo", "Wanda-Marie von der Hohenwarte", "小林さくら", "محمد عبد الرحمن", "Анастасия", "WWWWWWWWWWWWWWWW", "Jo", "Ž"];
            var moves = new List<Move>();
            for (var i = 0; i < 35; i++)
            {
                var start = HalfCounts.FromCounts(2 + (4 * i));
                moves.Add(new Move { Start = start, Attacker = i % names.Length, From = new Bearing((i * 5) % Bearing.Circle), Attack = "swing-right", Technique = "parry-down-left", Reaction = "head-drops" });
                moves.Add(new Move { Start = start + HalfCounts.FromCounts(1), Attacker = i % names.Length, Technique = "knee-to-head-right", Reaction = i % 4 == 3 ? "back-fall" : "staggers-back" });
            }

            return yard with
            {
                Brief = yard.Brief with { Title = "Eight in a small yard", Attackers = [.. names.Select(n => yard.Brief.Attackers[0] with { Name = n })] },
                Placements = [.. names.Select((_, i) => new Placement(new Bearing(3 * i), new Centimetres(220), HalfCounts.Zero))],
                Moves = moves,
            };
        }
    }

    /// <summary>Writes the HTML pages of a routine into a folder of that name, once.</summary>
    public string Of(string name, Routine routine, string file)
    {
        var folder = Path.Combine(Folder, name);
        if (!Directory.Exists(folder))
        {
            Directory.CreateDirectory(folder);
            var bare = PaperSource.Of(new Scene(routine.Brief, Book), routine);
            var plan = new CameraPlan(Hit.Of(bare.Scene, bare.Steps), routine.Brief.Cameras, [new SetUp(new Bearing(20), new Centimetres(500), new Centimetres(250))]);
            var source = bare.With(PaperOptions.Default with { Cards = Figures.Value, Cameras = plan });
            foreach (var paper in Pack.Of(source).Where(p => p.FileName.EndsWith(".html", StringComparison.Ordinal)))
            {
                using var stream = File.Create(Path.Combine(folder, paper.FileName));
                paper.Write(source, stream);
            }
        }

        return Path.Combine(folder, file);
    }

    public void Dispose() => Directory.Delete(Folder, recursive: true);
}
