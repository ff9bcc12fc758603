using System.Text.RegularExpressions;
using Generator.Domain;
using Generator.Library.Reading;

namespace Generator.Library.Files.Notes;

/// <summary>What notes say of hand props: "with a stick in the left hand" of somebody, "Floor: a ladle at 3, 1.5 m" of what lies ready.</summary>
/// <param name="Line">Number of the line.</param>
/// <param name="Part">Where it is said.</param>
/// <param name="Kind">What it is.</param>
/// <param name="Called">What people call it, as it is written.</param>
internal sealed partial record PropNotes(int Line, NotesPart Part, PropKind Kind, string Called)
{
    /// <summary>The hand that is said.</summary>
    public PropHand? Hand { get; init; }

    /// <summary>Where it lies; null where it is held.</summary>
    public Bearing? Bearing { get; init; }

    public Centimetres? Distance { get; init; }

    /// <summary>The hand that holds it: the one that is said, else the right one, or both where it takes both.</summary>
    public PropHand Holds => Hand ?? (Kind.Hands == 2 ? PropHand.Both : PropHand.Right);

    /// <summary>The part of a line about somebody says what they carry in; the word for what it is may be one that no library knows.</summary>
    public static bool IsCarried(string text) => Carried().IsMatch(text);

    /// <summary>A line is about somebody because of this part of it: what they carry is a known kind, or nothing but a prop can be meant.</summary>
    public static bool SaysCarried(NotesPart part, PropTable table) => IsCarried(part.Text) && (Brings().IsMatch(part.Text) || OfCarried(part, table, []) is not null);

    /// <summary>What somebody carries, or what is wrong with how it is said.</summary>
    /// <param name="part">Part of a line about somebody, of which <see cref="IsCarried"/> says yes.</param>
    /// <param name="table">Kinds that the library knows.</param>
    /// <param name="faults">Is told what is wrong.</param>
    public static PropNotes? OfCarried(NotesPart part, PropTable table, List<NotesFault> faults)
    {
        var said = Carried().Match(part.Text);
        if (Of(0, part, said.Groups["what"].Value, table, faults) is not { } prop)
        {
            return null;
        }

        var word = said.Groups["hand"].Value.ToLowerInvariant();
        prop = prop with { Hand = word switch { "left" => PropHand.Left, "right" => PropHand.Right, "both" => PropHand.Both, _ => null } };
        if (PropFaults.Hand(prop.Kind, prop.Hand) is { } unfit)
        {
            faults.Add(new NotesFault(part.Column, unfit, prop.Kind.Hands == 2 ? "Maybe leave the hand out." : "Maybe the left hand is meant, or the right."));
        }

        return prop;
    }

    /// <summary>What a line about the floor says to lie there; null where the library knows no such kind, or where it is not said whole.</summary>
    /// <param name="line">Number of the line.</param>
    /// <param name="said">What the line says.</param>
    /// <param name="table">Kinds that the library knows.</param>
    /// <param name="faults">Is told what is wrong.</param>
    public static PropNotes? OnTheFloor(int line, FloorNotes said, PropTable table, List<NotesFault> faults) =>
        Of(line, said.Part, said.What, table, faults) is not { } prop ? null : prop with { Bearing = said.Bearing, Distance = said.Distance };

    /// <summary>In words: "a stick in the left hand", "a stick on the floor at 3, 1.50 m from the mark".</summary>
    public string Reading() => (string.Equals(PlainWord.Of(Kind.Name[(Kind.Name.IndexOf(' ', StringComparison.Ordinal) + 1)..]), PlainWord.Of(Called), StringComparison.Ordinal) ? Kind.Name : $"{Called} ({Kind.Name})")
        + (Bearing is { } bearing ? $" on the floor at {bearing.ToClockText()}, {Distance} from the mark" : Holds == PropHand.Both ? " in both hands" : $" in the {EnumWords.Of(Holds)} hand");

    private static PropNotes? Of(int line, NotesPart part, string what, PropTable table, List<NotesFault> faults)
    {
        var named = Named().Match(what);
        var (word, called) = named.Success ? (named.Groups["kind"].Value, named.Groups["name"].Value) : (what, what);
        if (table.Find(word) is { } kind)
        {
            return new PropNotes(line, part, kind, called);
        }

        var (message, maybe) = PropFaults.Unknown(word, table, "; a stick called ladle gives a stick that name");
        faults.Add(new NotesFault(part.Column, message, maybe));
        return null;
    }

    [GeneratedRegex(@"^(with|carries|carrying|holds|holding|has|armed with)\s+((a|an|the|his|her|their)\s+)?(?<what>.+?)(\s+in\s+((the|his|her|their)\s+)?(?<hand>left|right|both)(\s+hands?)?)?$", RegexOptions.IgnoreCase)]
    private static partial Regex Carried();

    [GeneratedRegex(@"^(carries|carrying|armed with)\s+an?\s", RegexOptions.IgnoreCase)]
    private static partial Regex Brings();

    [GeneratedRegex(@"^(?<kind>.+?)\s+(called|named)\s+(the\s+)?(?<name>.+)$", RegexOptions.IgnoreCase)]
    private static partial Regex Named();
}
