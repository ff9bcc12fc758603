using Generator.Domain;
using Generator.Figures.Poses;
using Generator.Figures.Posing;
using Generator.Library;
using Generator.Paperwork;
using Generator.Paperwork.Html;
using Generator.Rehearsal.Documents;
using Generator.Rules;
using Newtonsoft.Json.Linq;

namespace Generator.Rehearsal.Serving;

/// <summary>What of a fight is drawn for the page, by the code that draws the printed pages.</summary>
internal sealed class Pictures(Book book)
{
    /// <summary>Fights that are kept worked out: the present one and a few that are offered.</summary>
    private const int Most = 8;

    private readonly System.Threading.Lock door = new();
    private readonly Queue<PaperSource> kept = new();
    private readonly Lazy<Cards?> cards = new(() => PoseReader.LoadBundled(book).Value is { } poses ? new Cards(poses, book) : null);

    /// <summary>The floor at a move, with its figures; before the first, everybody where they open.</summary>
    public JObject Floor(Scene scene, Seen seen, int move, bool whole)
    {
        if (Cannot(scene) is { } cannot)
        {
            return cannot;
        }

        var source = Of(scene, seen.Routine);
        var plate = FloorPlate.Of(source, move, whole);
        var step = move >= 0 && move < source.Steps.Count ? source.Steps[move] : null;
        return new JObject
        {
            ["svg"] = plate.Svg,
            ["x"] = plate.Mark.X,
            ["y"] = plate.Mark.Y,
            ["scale"] = plate.Scale,
            ["width"] = plate.Width,
            ["height"] = plate.Height,
            ["people"] = new JArray(plate.People.Select(p => new JArray(p.Performer < 0 ? scene.Brief.Hero.Name : scene.Brief.Attackers[p.Performer].Name, p.At.X, p.At.Y))),
            ["figures"] = step is null ? string.Empty : FigurePlate.Of(source, step),
            ["told"] = step is null ? string.Empty : FigurePlate.Told(step),
        };
    }

    /// <summary>Weight and lanes over time, and when the moves are.</summary>
    public JObject Time(Scene scene, Seen seen)
    {
        if (Cannot(scene) is { } cannot)
        {
            return cannot;
        }

        var source = Of(scene, seen.Routine);
        return new JObject
        {
            ["end"] = source.Shape.End,
            ["moves"] = new JArray(source.Steps.Select(s => new JArray(s.Start, s.End))),
            ["wide"] = Plate(TimePlate.Of(source, wide: true)),
            ["narrow"] = Plate(TimePlate.Of(source, wide: false)),
        };
    }

    /// <summary>The figures of some moves, each with its number from 0 and what is done.</summary>
    public JArray Figures(Scene scene, Seen seen, IEnumerable<int> moves)
    {
        if (Cannot(scene) is not null)
        {
            return [];
        }

        var source = Of(scene, seen.Routine);
        return new JArray(moves.Where(m => m < source.Steps.Count).Select(m => new JObject { ["move"] = m, ["svg"] = FigurePlate.Of(source, source.Steps[m]), ["told"] = FigurePlate.Told(source.Steps[m]) }));
    }

    /// <summary>Weight in every stretch and when the moves are, for a small picture; null where nothing can be drawn.</summary>
    public JObject? Strip(Scene scene, Seen seen)
    {
        if (Cannot(scene) is not null)
        {
            return null;
        }

        var source = Of(scene, seen.Routine);
        return new JObject
        {
            ["end"] = source.Shape.End,
            ["weight"] = new JArray(source.Shape.Intensity.Weight),
            ["moves"] = new JArray(source.Steps.Select(s => new JArray(s.Start, s.End))),
        };
    }

    public JObject Player(Scene scene, Seen seen) => Cannot(scene) ?? new JObject { ["html"] = PlayerPlate.Of(Of(scene, seen.Routine)) };

    /// <summary>The drawings know one hero: with an ally they would give one's moves to the other. Null where they can be drawn.</summary>
    private static JObject? Cannot(Scene scene) => scene.Brief.Ally is not { } ally ? null
        : new JObject { ["cannot"] = $"This drawing cannot show {ally.Part.Name} beside {scene.Brief.Hero.Name} yet. The moves, the audit and the files hold both." };

    private static JObject Plate(TimePlate plate) => new() { ["svg"] = plate.Svg, ["left"] = plate.Left, ["right"] = plate.Right, ["width"] = plate.Width, ["height"] = plate.Height };

    private PaperSource Of(Scene scene, Routine routine)
    {
        lock (door)
        {
            if (kept.FirstOrDefault(s => ReferenceEquals(s.Routine, routine)) is { } known)
            {
                return known;
            }

            var source = PaperSource.Of(scene, routine).With(PaperOptions.Default with { Cards = cards.Value });
            kept.Enqueue(source);
            if (kept.Count > Most)
            {
                kept.Dequeue();
            }

            return source;
        }
    }
}
