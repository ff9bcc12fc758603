using System.Globalization;
using Generator.Domain;
using Generator.Library.Reading;

namespace Generator.Library.Files.Notes;

/// <summary>The props and things of a fight from what its notes say, added to those of a brief beside them.</summary>
/// <param name="table">Kinds of props that the library knows.</param>
/// <param name="things">Kinds of things that the library knows.</param>
/// <param name="refuse">Is told what is wrong, with the line.</param>
internal sealed class PropsOfNotes(PropTable table, ThingTable things, Action<int, NotesFault> refuse)
{
    private static readonly string[] Ordinals = ["second", "third", "fourth", "fifth", "sixth", "seventh", "eighth", "ninth", "tenth", "eleventh", "twelfth"];

    private readonly List<(PropNotes Said, string? With)> said = [];

    private readonly List<(int Line, FloorNotes Said, ThingKind Kind)> stand = [];
    private readonly Dictionary<FloorNotes, string> readings = [];
    private readonly List<(NotesLine Line, IReadOnlyList<FloorNotes> Said)> floor = [];

    /// <summary>Lines about the floor with what each says.</summary>
    public IEnumerable<Understood> Understood => floor.Select(f => new Understood(f.Line.Number, 0, $"{f.Line.Name}: {f.Line.Rest.Text}", [.. f.Said.Where(readings.ContainsKey).Select(s => readings[s])]) { IsPlain = true });

    /// <summary>The notes say something of props.</summary>
    public bool Any => said.Count > 0;

    /// <summary>The farthest that something lies from the mark, in centimetres; 0 where nothing does.</summary>
    public int Farthest => said.Select(s => s.Said.Distance?.Value ?? 0).Concat(stand.Select(t => ThingNotes.Reaches(t.Said, t.Kind))).Append(0).Max();

    /// <summary>What somebody carries in.</summary>
    public void Carried(NotesLine line, CastWords words) => said.AddRange(words.Carries.Select(p => (p with { Line = line.Number }, (string?)line.Name)));

    /// <summary>What a line says to be on the floor.</summary>
    public void OnTheFloor(NotesLine line)
    {
        var faults = new List<NotesFault>();
        var all = FloorNotes.Of(line, faults);
        foreach (var piece in all.Where(p => p.What.Length > 0))
        {
            if (table.Find(piece.What) is null && ThingNotes.KindOf(piece, things) is { } kind)
            {
                stand.Add((line.Number, piece, kind));
            }
            else if (PropNotes.OnTheFloor(line.Number, piece, table, faults) is { } prop)
            {
                said.Add((prop, null));
                readings[piece] = prop.Reading();
            }
        }

        faults.AddRange(faults.Count > 0 ? [] : all.Where(p => p.Bearing is null || p.Distance is null).Select(p => new NotesFault(p.Part.Column, $"Where {FieldText.Quote(p.What)} {(stand.Exists(t => t.Said == p) ? "stands" : "lies")} is not said whole: {(p.Bearing is null ? "the clock position" : "the distance")} is missing.", FloorNotes.Example)));
        faults.ForEach(f => refuse(line.Number, f));
        floor.Add((line, all));
    }

    /// <summary>The floor with everything that stands on it; a kind that a brief beside has already is left as it is there.</summary>
    /// <param name="plan">The floor, large enough.</param>
    public FloorPlan Furnished(FloorPlan plan)
    {
        foreach (var (line, piece, kind) in stand.Where(t => !plan.Obstacles.Any(o => o.Kind == t.Kind.Id)).ToList())
        {
            var faults = new List<NotesFault>();
            if (ThingNotes.Of(piece, kind, plan, faults) is { } thing)
            {
                plan = plan with { Obstacles = [.. plan.Obstacles, thing] };
                readings[piece] = ThingNotes.Reading(piece, thing);
            }

            faults.ForEach(f => refuse(line, f));
        }

        return plan;
    }

    /// <summary>All props of the fight.</summary>
    /// <param name="brief">With its cast and floor.</param>
    public IReadOnlyList<PropPart> Of(Brief brief)
    {
        var (props, cast) = (brief.Props.ToList(), Cast.Of(brief));
        foreach (var (prop, with) in said)
        {
            var isHero = string.Equals(with, brief.Hero.Name, StringComparison.OrdinalIgnoreCase);
            var who = with is null ? (int?)null : isHero ? -1 : cast.Find(with);
            if (who < 0 && !isHero)
            {
                refuse(prop.Line, new NotesFault(1, Cast.Unknown(with!), cast.Advice(with!)));
                continue;
            }

            if (brief.Props.Any(p => p.Kind == prop.Kind.Id && p.With == who))
            {
                continue;
            }

            var (dx, dy) = (prop.Bearing ?? default).Direction;
            var away = prop.Distance?.Value ?? 0;
            var part = new PropPart(NameOf(prop.Called, props), prop.Kind.Id)
            {
                With = who,
                Hand = prop.Holds,
                X = with is null ? new((int)Math.Round(brief.Floor.MarkX.Value + (away * dx))) : default,
                Y = with is null ? new((int)Math.Round(brief.Floor.MarkY.Value + (away * dy))) : default,
            };
            Check(prop, part, props, brief);
            props.Add(part);
        }

        if (props.Count > PropPart.Most && said.Count > 0)
        {
            refuse(said[^1].Said.Line, new NotesFault(1, $"There are {props.Count.ToString(CultureInfo.InvariantCulture)} props; there may be {PropPart.Most.ToString(CultureInfo.InvariantCulture)}.", "Maybe leave out what nobody takes into a hand."));
        }

        return props;
    }

    private void Check(PropNotes prop, PropPart part, List<PropPart> others, Brief brief)
    {
        if (PropFaults.Full(part, others, brief) is { } full)
        {
            refuse(prop.Line, new NotesFault(prop.Part.Column, full, "Maybe the left hand is meant, or it lies on the floor."));
        }
        else if (part.With is null && PropFaults.Place(part, brief) is var (message, maybe))
        {
            refuse(prop.Line, new NotesFault(prop.Part.Column, message, maybe));
        }
    }

    /// <summary>A second stick is called so.</summary>
    private static string NameOf(string called, List<PropPart> others)
    {
        bool IsTaken(string name) => others.Exists(o => string.Equals(o.Name, name, StringComparison.OrdinalIgnoreCase));
        return !IsTaken(called) ? called : Ordinals.Select(o => $"{o} {called}").FirstOrDefault(n => !IsTaken(n)) ?? called;
    }
}
