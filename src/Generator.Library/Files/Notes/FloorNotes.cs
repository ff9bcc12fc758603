using System.Text.RegularExpressions;
using Generator.Domain;
using Generator.Library.Reading;

namespace Generator.Library.Files.Notes;

/// <summary>One piece of a line about the floor: "a ladle at 3, 1.5 m".</summary>
/// <param name="Part">Where it is said.</param>
/// <param name="What">What it is, without its article.</param>
internal sealed partial record FloorNotes(NotesPart Part, string What)
{
    public const string Example = "Maybe write what it is, a clock position and a distance from the mark, such as Floor: a stick at 3, 1.5 m";

    /// <summary>Where it is.</summary>
    public Bearing? Bearing { get; init; }

    /// <summary>From the mark.</summary>
    public Centimetres? Distance { get; init; }

    /// <summary>A line about the floor, by what stands before its colon.</summary>
    public static bool IsFloor(string name) => FloorName().IsMatch(name);

    /// <summary>Everything that a line says to be there.</summary>
    /// <param name="line">The line.</param>
    /// <param name="faults">Is told what is wrong.</param>
    public static IReadOnlyList<FloorNotes> Of(NotesLine line, List<NotesFault> faults)
    {
        var all = new List<FloorNotes>();
        foreach (var part in line.Rest.Listed())
        {
            if (all.Count > 0 && Placed(all[^1], part, faults) is { } placed)
            {
                all[^1] = placed;
                continue;
            }

            var said = Lying().Match(part.Text);
            var piece = new FloorNotes(part, said.Groups["what"].Value);
            var at = said.Groups["at"];
            all.Add(at.Success ? Placed(piece, new NotesPart(at.Value.Trim(), part.Column + at.Index), faults) ?? Lost(piece, at.Value, faults) : piece);
        }

        faults.AddRange(all.Where(p => p.What.Length == 0).Select(p => new NotesFault(p.Part.Column, "Nothing is said to lie there.", Example)));
        return all;
    }

    private static FloorNotes? Placed(FloorNotes piece, NotesPart part, List<NotesFault> faults)
    {
        if (CastWords.LengthOf(part.Text) is { } metres)
        {
            if (piece.Distance is not null)
            {
                faults.Add(new NotesFault(part.Column, $"{FieldText.Quote(part.Text)} says a second time what was said before it.", "Maybe one of the two can go."));
            }
            else if (!Measures.PropDistance.Allows(metres.Metres))
            {
                faults.Add(new NotesFault(part.Column, $"{FieldText.Quote(part.Text)} is not {Measures.PropDistance.Range}.", Measures.PropDistance.Advice));
            }

            return piece with { Distance = metres };
        }

        var place = part.Text.Replace(" o'clock", string.Empty, StringComparison.OrdinalIgnoreCase);
        return piece.Bearing is null && FromWords.TryParse(At().Replace(place, string.Empty), out var bearing) ? piece with { Bearing = bearing } : null;
    }

    private static FloorNotes Lost(FloorNotes piece, string at, List<NotesFault> faults)
    {
        faults.Add(new NotesFault(piece.Part.Column, $"{FieldText.Quote(at)} is no place on the floor.", Example));
        return piece;
    }

    [GeneratedRegex(@"^((on|upon) )?(the )?(floor|ground)$", RegexOptions.IgnoreCase)]
    private static partial Regex FloorName();

    [GeneratedRegex(@"^((a|an|the)\s+)?(?<what>.*?)((\s+(lies|stands))?\s+at\s+(?<at>.+))?$", RegexOptions.IgnoreCase)]
    private static partial Regex Lying();

    [GeneratedRegex(@"^at\s+", RegexOptions.IgnoreCase)]
    private static partial Regex At();
}
