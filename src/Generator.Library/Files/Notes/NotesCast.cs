using System.Globalization;
using System.Text.RegularExpressions;
using Generator.Domain;
using Generator.Domain.Sketches;
using Generator.Library.Reading;

namespace Generator.Library.Files.Notes;

/// <summary>Who is in the notes and where they open: from a brief given beside, else from the lines about people and the names in order of appearance.</summary>
internal sealed partial class NotesCast
{
    private const int LongestName = 40;

    /// <summary>Room behind the one who opens farthest away, and half of the largest floor, in centimetres.</summary>
    private const int BeyondFarthest = 100, MostFloor = 5000;

    private readonly IReadOnlyList<NotesLine> lines;
    private readonly Action<int, NotesFault> refuse;
    private readonly List<(NotesLine Line, CastWords Said)> people = [];
    private readonly PropsOfNotes props;
    private readonly Brief brief;

    /// <summary>Name of the ally; null where there is none.</summary>
    public string? AllyName => brief.Ally?.Part.Name;

    /// <summary>Works the cast out; tells of names that a brief lacks where they are used.</summary>
    /// <param name="lines">All lines.</param>
    /// <param name="given">The brief beside; null for none.</param>
    /// <param name="table">Kinds of props that the library knows.</param>
    /// <param name="things">Kinds of things that the library knows.</param>
    /// <param name="refuse">Is told what is wrong, with the line.</param>
    public NotesCast(IReadOnlyList<NotesLine> lines, Brief? given, PropTable table, ThingTable things, Action<int, NotesFault> refuse)
    {
        (this.lines, this.refuse, props) = (lines, refuse, new PropsOfNotes(table, things, refuse));
        ReadPeople(table);
        foreach (var line in lines.Where(l => l.Kind == NotesLineKind.Floor))
        {
            props.OnTheFloor(line);
        }

        var own = given ?? Unsaid();
        var hero = people.Find(p => p.Said.IsHero);
        if (given is not null && hero.Said is not null && !Same(hero.Line.Name, given.Hero.Name))
        {
            refuse(hero.Line.Number, new NotesFault(1, $"The hero of the brief is {given.Hero.Name}, not {hero.Line.Name}.", "Maybe another brief is meant, or this line can go."));
        }

        var ally = people.Find(p => p.Said.IsAlly);
        this.lines = ally.Said is null && own.Ally is null ? lines : [.. lines.Select(l => l.For(ally.Said is null ? own.Ally!.Part.Name : ally.Line.Name))];
        brief = people.Count == 0 ? own : own with
        {
            Hero = hero.Said is null ? own.Hero : own.Hero with { Skill = hero.Said.Skill ?? own.Hero.Skill, Lead = hero.Said.Lead ?? own.Hero.Lead, Height = hero.Said.Height ?? own.Hero.Height, Kneels = hero.Said.Kneels ?? own.Hero.Kneels },
            Ally = ally.Said is null ? own.Ally : AllyOf(ally.Line.Name, ally.Said, own.Ally),
            Attackers = [.. own.Attackers.Select(a => Part(a, About(a.Name)))],
        };
        brief = given is null ? brief with { Floor = Holding(brief, props.Farthest) } : brief;
        brief = props.Furnished(brief.Floor) is var floor && floor == brief.Floor ? brief : brief with { Floor = floor };
        brief = props.Any ? brief with { Props = props.Of(brief) } : brief;
        Names = Cast.Of(brief);
    }

    public Cast Names { get; }

    /// <summary>The lines, those of the ally's moves as what they say of an attacker.</summary>
    public IReadOnlyList<NotesLine> Lines => lines;

    public string HeroName => brief.Hero.Name;

    /// <summary>What the lines about people say, and every attacker of whom there is none where they are named first.</summary>
    public IEnumerable<Understood> Understood =>
    [
        .. props.Understood,
        .. people.Select(p => new Understood(p.Line.Number, 0, $"{p.Line.Name}: {p.Line.Rest.Text}", [.. p.Said.Reading()]) { IsPlain = true }),
        .. Names.Names.Where(n => About(n) is null).Select(n => lines.FirstOrDefault(l => Same(l.Name, n))).OfType<NotesLine>()
            .Select(l => new Understood(l.Number, 0, l.Name, ["an attacker"]) { IsPlain = true }),
    ];

    /// <summary>Whether somebody's opening place is said apart from where they come from first.</summary>
    public bool IsPlaced(int attacker) => attacker >= 0 && brief.Attackers[attacker].Bearing is not null;

    public Sketch Sketch(IReadOnlyList<SketchMove> moves) => new() { Brief = brief, Placements = [.. brief.Attackers.Select(Place)], Moves = moves };

    /// <summary>A floor that nobody described holds everybody where the notes place them.</summary>
    private static FloorPlan Holding(Brief brief, int props)
    {
        var farthest = Math.Max(props, brief.Attackers.Max(a => a.Distance?.Value) ?? 0);
        var half = Math.Min(MostFloor, Math.Max(brief.Floor.MarkX.Value, farthest + BeyondFarthest));
        return brief.Floor with { Width = new Centimetres(2 * half), Depth = new Centimetres(2 * half), MarkX = new Centimetres(half), MarkY = new Centimetres(half) };
    }

    private static bool Same(string one, string other) => string.Equals(one, other, StringComparison.OrdinalIgnoreCase);

    private static AttackerPart Part(AttackerPart part, CastWords? said) => said is null ? part : part with
    {
        Skill = said.Skill ?? part.Skill,
        Height = said.Height ?? part.Height,
        Bearing = said.Bearing ?? part.Bearing,
        Distance = said.Distance ?? (said.Kneels is null ? part.Distance : AttackerPart.NearestOpening),
        Speed = said.Speed ?? part.Speed,
        Entrance = said.Kneels is null ? said.Entrance ?? part.Entrance : HalfCounts.Zero,
        Kneels = said.Kneels ?? part.Kneels,
    };

    private static Ally AllyOf(string name, CastWords said, Ally? given)
    {
        var part = given?.Part ?? new HeroPart { Name = name, Skill = Skill.Stunt };
        var bearing = said.Bearing ?? given?.Bearing ?? Ally.Behind;
        part = part with { Skill = said.Skill ?? part.Skill, Lead = said.Lead ?? part.Lead, Height = said.Height ?? part.Height, Kneels = said.Kneels ?? part.Kneels };
        return new Ally(part, bearing, said.Distance ?? given?.Distance ?? Ally.UsualDistance, given?.Faces ?? bearing);
    }

    private CastWords? About(string name) => people.Find(p => Same(p.Line.Name, name)).Said;

    private void ReadPeople(PropTable table)
    {
        foreach (var line in lines.Where(l => l.Kind == NotesLineKind.Person))
        {
            var said = CastWords.Of(line.Rest, table);
            foreach (var fault in said.Faults)
            {
                refuse(line.Number, fault);
            }

            if (people.Find(p => Same(p.Line.Name, line.Name)).Line is { } before)
            {
                refuse(line.Number, new NotesFault(1, $"Who {line.Name} is stands on line {Figure(before.Number)} already.", "Maybe put both on one line, or somebody else is meant."));
            }
            else if (said.IsHero && people.Find(p => p.Said.IsHero).Line is { } other)
            {
                refuse(line.Number, new NotesFault(1, $"{other.Name} is the hero already, on line {Figure(other.Number)}; there is one hero.", "Maybe one of the two is an attacker."));
            }
            else if (said.IsAlly && people.Find(p => p.Said.IsAlly).Line is { } second)
            {
                refuse(line.Number, new NotesFault(1, $"{second.Name} is the ally already, on line {Figure(second.Number)}; there is one ally.", "Maybe one of the two is an attacker."));
            }
            else if (line.From is { } from)
            {
                refuse(line.Number, new NotesFault(from.Column, "A line about somebody says where they stand behind the colon.", $"Maybe write {line.Name}: {from.Text}, 3 m"));
            }

            people.Add((line, said));
            props.Carried(line, said);
        }
    }

    /// <summary>The brief of notes that have none beside them.</summary>
    private Brief Unsaid()
    {
        var heroes = people.Where(p => p.Said.IsHero || p.Said.IsAlly).Select(p => p.Line.Name).ToHashSet(StringComparer.OrdinalIgnoreCase);
        var ally = people.Find(p => p.Said.IsAlly).Line?.Name;
        var named = lines.Select(l => l.For(ally)).Where(l => l.Kind is NotesLineKind.Person or NotesLineKind.Moves && !heroes.Contains(l.Name) && l.Name.Length > 0).ToList();
        var names = named.Select(l => l.Name).Distinct(StringComparer.OrdinalIgnoreCase).ToList();
        if (names.Count is 0 or > Cast.Most)
        {
            refuse(
                names.Count == 0 ? 0 : named.First(l => Same(l.Name, names[Cast.Most])).Number,
                names.Count == 0 ? new NotesFault(0, "The notes name no attacker.", "Maybe write a name and a colon first, such as Bruno: swing > duck")
                    : new NotesFault(1, $"The notes name {Figure(names.Count)} attackers; there must be 1 to {Figure(Cast.Most)}.", "Maybe a name is spelt in several ways."));
        }

        foreach (var name in names)
        {
            CheckName(name, named, names);
        }

        foreach (var hero in people.Where(p => p.Said.IsHero || p.Said.IsAlly))
        {
            CheckForm(hero.Line.Name, hero.Line.Number);
        }

        var title = lines.FirstOrDefault(l => l is { Kind: NotesLineKind.Remark, Rest.IsEmpty: false });
        if (title is not null)
        {
            CheckForm(title.Rest.Text, title.Number);
        }

        return new Brief
        {
            Title = title?.Rest.Text ?? "Untitled fight",
            Hero = new HeroPart { Name = people.Find(p => p.Said.IsHero).Line?.Name ?? "Hero", Skill = Skill.Stunt },
            Attackers = [.. names.Select(n => new AttackerPart { Name = n, Skill = Skill.Stunt })],
        };
    }

    /// <summary>A name that stands once and is one letter off another one is a slip, unless a line says who that is.</summary>
    private void CheckName(string name, List<NotesLine> named, List<string> names)
    {
        var first = named.First(l => Same(l.Name, name));
        if (!CheckForm(name, first.Number))
        {
            return;
        }

        if (And().Split(name) is { Length: > 1 } each && each.All(e => names.Exists(n => Same(n, e.Trim()))))
        {
            refuse(first.Number, new NotesFault(1, $"{FieldText.Quote(name)} before the colon names {Figure(each.Length)} people; a line is about one.", $"Maybe write a line for each, such as {each[0].Trim()}: rushes > steps aside"));
        }
        else if (char.IsAsciiDigit(name[0]) && name.Contains(' ', StringComparison.Ordinal))
        {
            refuse(first.Number, new NotesFault(1, "A figure stands before the name.", $"Maybe a count is meant; it stands behind the move, such as {name[(name.IndexOf(' ', StringComparison.Ordinal) + 1)..]}: swing > duck @4"));
        }
        else if (name.Length > LongestName || name.Split(' ').Length > 3 || name.Contains(',', StringComparison.Ordinal) || name.StartsWith("from ", StringComparison.OrdinalIgnoreCase))
        {
            refuse(first.Number, new NotesFault(1, $"{FieldText.Quote(name)} before the colon is no name.", name.StartsWith("from ", StringComparison.OrdinalIgnoreCase) ? "Maybe write the name first, and where they come from behind it, such as Bruno from behind: swing > duck" : "Maybe write the name of the attacker alone, such as Bruno: swing > duck"));
        }
        else if (name.Length >= 4 && About(name) is null && named.Count(l => Same(l.Name, name)) == 1
            && names.Find(n => !Same(n, name) && NearestWords.Distance(n.ToLowerInvariant(), name.ToLowerInvariant()) == 1) is { } other)
        {
            refuse(first.Number, new NotesFault(1, $"{name} stands here only, and is one letter off {other}.", $"Maybe {other} is meant; if they are two people, say who {name} is on a line such as {name}: 3, 3 m"));
        }
    }

    /// <summary>Whether everybody sees the name as it is; refuses it otherwise.</summary>
    private bool CheckForm(string name, int line)
    {
        if (NameForm.Fault(name) is not var (message, maybe))
        {
            return true;
        }

        refuse(line, new NotesFault(1, message, maybe));
        return false;
    }

    /// <summary>Whoever is said to stand somewhere, or to come from somewhere the first time, opens there; null where nothing is said.</summary>
    private Placement? Place(AttackerPart attacker)
    {
        var first = lines.FirstOrDefault(l => l.Kind == NotesLineKind.Moves && Same(l.Name, attacker.Name))?.From;
        var bearing = attacker.Bearing ?? (first is { } from && FromWords.TryParse(from.Text, out var comes) ? comes : null);
        return bearing is { } b ? new Placement(b, attacker.Distance ?? RoutineReader.DefaultDistance, attacker.Entrance ?? HalfCounts.Zero) : null;
    }

    [GeneratedRegex(@"\s+and\s+|[&+/,]", RegexOptions.IgnoreCase)]
    private static partial Regex And();

    private static string Figure(int number) => number.ToString(CultureInfo.InvariantCulture);
}
