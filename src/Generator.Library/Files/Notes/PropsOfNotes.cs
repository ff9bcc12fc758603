using System.Globalization;
using Generator.Domain;

namespace Generator.Library.Files.Notes;

/// <summary>The props of a fight from what its notes say, added to those of a brief beside them.</summary>
/// <param name="table">Kinds that the library knows.</param>
/// <param name="refuse">Is told what is wrong, with the line.</param>
internal sealed class PropsOfNotes(PropTable table, Action<int, NotesFault> refuse)
{
    private static readonly string[] Ordinals = ["second", "third", "fourth", "fifth", "sixth", "seventh", "eighth", "ninth", "tenth", "eleventh", "twelfth"];

    private readonly List<(PropNotes Said, string? With)> said = [];

    /// <summary>Lines about the floor with what each says.</summary>
    public List<Understood> Understood { get; } = [];

    /// <summary>The notes say something of props.</summary>
    public bool Any => said.Count > 0;

    /// <summary>The farthest that something lies from the mark, in centimetres; 0 where nothing does.</summary>
    public int Farthest => said.Max(s => s.Said.Distance?.Value) ?? 0;

    /// <summary>What somebody carries in.</summary>
    public void Carried(NotesLine line, CastWords words) => said.AddRange(words.Carries.Select(p => (p with { Line = line.Number }, (string?)line.Name)));

    /// <summary>What a line says to lie on the floor.</summary>
    public void OnTheFloor(NotesLine line)
    {
        var faults = new List<NotesFault>();
        var props = PropNotes.OfFloor(line, table, faults);
        faults.ForEach(f => refuse(line.Number, f));
        said.AddRange(props.Select(p => (p, (string?)null)));
        Understood.Add(new Understood(line.Number, 0, $"{line.Name}: {line.Rest.Text}", [.. props.Select(p => p.Reading())]) { IsPlain = true });
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
