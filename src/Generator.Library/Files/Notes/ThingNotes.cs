using System.Text.RegularExpressions;
using Generator.Domain;
using Generator.Library.Reading;

namespace Generator.Library.Files.Notes;

/// <summary>Furniture and walls on a line about the floor: "a padded table at 6, 1.5 m". As large as is usual for its kind, the long side across the way to it, its middle where it is said to be.</summary>
internal static partial class ThingNotes
{
    /// <summary>The thing on the floor; null where it is not said where, or where it cannot stand there.</summary>
    /// <param name="said">What the line says.</param>
    /// <param name="kind">What it is.</param>
    /// <param name="floor">The floor, with what stands there already.</param>
    /// <param name="faults">Is told what is wrong.</param>
    public static Obstacle? Of(FloorNotes said, ThingKind kind, FloorPlan floor, List<NotesFault> faults)
    {
        if (said is not { Bearing: { } bearing, Distance: { } away })
        {
            return null;
        }

        var (dx, dy) = bearing.Direction;
        var (width, depth) = Math.Abs(dx) <= Math.Abs(dy) ? (kind.Long, kind.Deep) : (kind.Deep, kind.Long);
        var (x, y) = (Corner(floor.MarkX, dx, width), Corner(floor.MarkY, dy, depth));
        var called = Plain(said.What);
        var thing = new Obstacle(NameOf(called, floor), new(x), new(y), width, depth) { Kind = kind.Id, Padded = Said(said, "padded"), Rated = Said(said, "rated") };
        if (x <= floor.MarkX.Value && floor.MarkX.Value <= x + width.Value && y <= floor.MarkY.Value && floor.MarkY.Value <= y + depth.Value)
        {
            faults.Add(new NotesFault(said.Part.Column, $"{FieldText.Quote(said.Part.Text)} would stand on the mark, as large as such a thing is: {SizeOf(thing)}.", "Maybe put it farther off; a brief says how large a thing is (generator guide brief)."));
            return null;
        }

        return thing;

        int Corner(Centimetres mark, double way, Centimetres size) => (int)Math.Round(mark.Value + (away.Value * way) - (size.Value / 2.0));
    }

    /// <summary>The kind of thing that is named; null for none.</summary>
    public static ThingKind? KindOf(FloorNotes said, ThingTable things) => things.Find(Plain(said.What));

    /// <summary>How far the floor must reach for it, in centimetres.</summary>
    public static int Reaches(FloorNotes said, ThingKind kind) => (said.Distance?.Value ?? 0) + (kind.Long.Value / 2);

    /// <summary>In words: "a table at 6, 1.50 m from the mark, 1.20 m by 0.70 m".</summary>
    public static string Reading(FloorNotes said, Obstacle thing) =>
        $"{thing.Name}{(thing.Padded ? ", padded" : string.Empty)}{(thing.Rated ? ", rated" : string.Empty)}, with its middle at {said.Bearing?.ToClockText()}, {said.Distance} from the mark, {SizeOf(thing)}";

    private static string SizeOf(Obstacle thing) => $"{thing.Width} wide and {thing.Depth} deep";

    private static bool Said(FloorNotes said, string word) => said.What.Split(' ', StringSplitOptions.RemoveEmptyEntries).Contains(word, StringComparer.OrdinalIgnoreCase);

    private static string Plain(string what) => Terms().Replace(what, string.Empty).Trim();

    /// <summary>A second table is called so.</summary>
    private static string NameOf(string called, FloorPlan floor) => floor.Obstacles.Any(o => string.Equals(o.Name, called, StringComparison.OrdinalIgnoreCase)) ? $"other {called}" : called;

    [GeneratedRegex(@"\b(padded|rated|and)\b", RegexOptions.IgnoreCase)]
    private static partial Regex Terms();
}
