using Generator.Domain;
using Generator.Domain.Sketches;
using Generator.Library.Reading;

namespace Generator.Library.Files.Notes;

/// <summary>Who is in the notes and where they open: from a brief given beside, else from the lines about people and the names in order of appearance.</summary>
internal sealed class NotesCast
{
    private readonly Brief brief;
    private readonly Placement?[] placements;

    private NotesCast(Brief brief, Placement?[] placements)
    {
        (this.brief, this.placements) = (brief, placements);
        Names = Cast.Of(brief);
    }

    public Cast Names { get; }

    /// <summary>Works the cast out; tells of names that the brief lacks where they are used.</summary>
    public static NotesCast Of(IReadOnlyList<NotesLine> lines, Brief? given, string file, ProblemList problems)
    {
        var people = lines.Where(l => l.Kind == NotesLineKind.Person).Select(l => (Line: l, Said: CastWords.Parse(l.Rest)!)).ToList();
        var hero = people.Find(p => p.Said.IsHero);
        var names = lines.Where(l => l.Name.Length > 0 && !(l.Kind == NotesLineKind.Person && CastWords.Parse(l.Rest)!.IsHero)).Select(l => l.Name)
            .Distinct(StringComparer.OrdinalIgnoreCase).ToList();
        var title = lines.FirstOrDefault(l => l.Kind == NotesLineKind.Remark)?.Rest;
        if (given is null && (names.Count == 0 || names.Count > Cast.Most))
        {
            problems.Add(new Problem(
                file, names.Count == 0 ? 0 : lines.First(l => string.Equals(l.Name, names[Cast.Most], StringComparison.OrdinalIgnoreCase)).Number, string.Empty, string.Empty,
                names.Count == 0 ? "The notes name no attacker." : $"The notes name {names.Count} attackers; there must be 1 to {Cast.Most}.",
                names.Count == 0 ? "Maybe write a name and a colon first, such as Bruno: swing > duck" : "Maybe a name is spelt in several ways."));
        }

        var own = new Brief
        {
            Title = string.IsNullOrWhiteSpace(title) ? "Untitled fight" : title,
            Hero = hero.Said is null ? new HeroPart { Name = "Hero", Skill = Skill.Stunt }
                : new HeroPart { Name = hero.Line.Name, Skill = hero.Said.Skill ?? Skill.Stunt, Lead = hero.Said.Lead ?? Side.Left, Height = hero.Said.Height ?? Performer.DefaultHeight },
            Attackers = [.. names.Take(Cast.Most).Select(n => Part(n, people.Find(p => string.Equals(p.Line.Name, n, StringComparison.OrdinalIgnoreCase)).Said))],
        };
        var cast = new NotesCast(given ?? own, new Placement?[(given ?? own).Attackers.Count]);
        cast.Place(lines, people);
        return cast;
    }

    public Sketch Sketch(IReadOnlyList<SketchMove> moves) => new() { Brief = brief, Placements = placements, Moves = moves };

    private static AttackerPart Part(string name, CastWords? said) => new()
    {
        Name = name,
        Skill = said?.Skill ?? Skill.Stunt,
        Bearing = said?.Bearing,
        Distance = said?.Distance,
        Speed = said?.Speed ?? 200,
        Entrance = said?.Entrance,
    };

    /// <summary>Whoever is said to stand somewhere, or to come from somewhere the first time, opens there.</summary>
    private void Place(IReadOnlyList<NotesLine> lines, IReadOnlyList<(NotesLine Line, CastWords Said)> people)
    {
        for (var a = 0; a < brief.Attackers.Count; a++)
        {
            var name = brief.Attackers[a].Name;
            var said = people.FirstOrDefault(p => string.Equals(p.Line.Name, name, StringComparison.OrdinalIgnoreCase)).Said;
            var from = lines.FirstOrDefault(l => l.Kind == NotesLineKind.Moves && string.Equals(l.Name, name, StringComparison.OrdinalIgnoreCase))?.From;
            var bearing = said?.Bearing ?? brief.Attackers[a].Bearing ?? (from is not null && FromWords.TryParse(from, out var comes) ? comes : null);
            if (bearing is { } b)
            {
                placements[a] = new Placement(b, said?.Distance ?? brief.Attackers[a].Distance ?? RoutineReader.DefaultDistance, said?.Entrance ?? brief.Attackers[a].Entrance ?? HalfCounts.Zero);
            }
        }
    }
}
