using Generator.Domain;
using Generator.Library;
using Generator.Library.Loading;
using Generator.Rules;

namespace Generator.Benchmarks;

/// <summary>A routine of 200 moves against four attackers: one phrase over and over, each time with the next attacker.</summary>
internal static class LongRoutine
{
    public const int Moves = 200;

    private static readonly (string? Attack, string Technique, string Reaction)[] Phrase =
    [
        ("swing-right", "outside-block-left", "limb-stopped"),
        (null, "cross-right", "head-back"),
        (null, "body-hook-left", "folds"),
        (null, "knee-to-head-right", "back-fall"),
    ];

    public static Book Book()
    {
        var read = LibraryLoader.LoadBundled();
        return read.Value ?? throw new InvalidOperationException(read.ToText());
    }

    public static Scene Scene(Book book)
    {
        string[] names = ["Bruno", "Wanda", "Piet", "Lotte"];
        var floor = new FloorPlan { Width = new Centimetres(1200), Depth = new Centimetres(1200), MarkX = new Centimetres(600), MarkY = new Centimetres(600) };
        var brief = new Brief
        {
            Floor = floor,
            Hero = new HeroPart { Name = "Ines", Skill = Skill.Stunt },
            Attackers = [.. names.Select(n => new AttackerPart { Name = n, Skill = Skill.Stunt })],
            Cameras = [new Camera("A", new Bearing(12), new Centimetres(500), new Centimetres(150))],
            Length = new Length(600, null, 40),
            Arc = Arc.Rising,
            Safety = Safety.Default with { FallsPerDay = 1000, HeadHitsPerDay = 1000 },
        };
        return new Scene(brief, book);
    }

    public static Routine Of(Scene scene, int length = Moves)
    {
        var moves = new List<Move>();
        var time = 0;
        for (var i = 0; i < length; i++)
        {
            var (attack, technique, reaction) = Phrase[i % Phrase.Length];
            var opens = attack is not null;
            time += opens && i > 0 ? HalfCounts.PerCount : 0;
            moves.Add(new Move
            {
                Start = new HalfCounts(time),
                Attacker = i / Phrase.Length % scene.Cast,
                Attack = attack,
                Cue = opens ? Cue.Voice : Cue.None,
                Technique = technique,
                Reaction = reaction,
            });
            time += scene.Book.Technique(technique).Length.Value;
        }

        return new Routine
        {
            Brief = scene.Brief,
            Placements = [.. Enumerable.Range(0, scene.Cast).Select(a => new Placement(new Bearing(a * 6), new Centimetres(250), HalfCounts.Zero))],
            Moves = moves,
        };
    }
}
