using Generator.Domain;
using Generator.Library;
using Generator.Library.Reading;
using Generator.Library.Words;
using Generator.Rules;

namespace Generator.Paperwork.Text;

/// <summary>One record of the library, written out for people.</summary>
public static class LibraryCard
{
    private const int Label = 16;

    public static string Of(Technique technique, Book book) => Card(
        $"{technique.Name} ({technique.Id})",
        ("kind", $"{Words.Of(technique.Family)}, {Kind(technique.Kind)}"),
        ("also called", string.Join(", ", technique.Aliases)),
        ("from", string.Join(", ", technique.Starts.Members.Select(book.Stances.NameOf))),
        ("ends in", technique.EndStance is { } end ? book.Stances.NameOf(end) : "the same stance"),
        ("target lies", technique.HasNoTarget ? "no target" : Window(technique.Window)),
        ("distance", technique.HasNoTarget ? string.Empty : Band(technique.Band)),
        ("takes", Takes(technique.Length, technique.FewestSeconds)),
        ("uses", string.Join(", ", technique.Needs.Members.Select(Words.Of))),
        ("answers", string.Join(", ", book.Attacks.Where(a => technique.Answers.Contains(a.Line)).Select(a => Words.Low(a.Name)))),
        ("reactions", string.Join(", ", technique.Reactions.Select(r => Words.Low(book.Reaction(r).Name)))),
        ("weight", $"{Words.Number(technique.Weight)} of 5"),
        ("skill", $"hero {Words.Of(technique.HeroSkill)}, attacker {Words.Of(technique.AttackerSkill)}"),
        ("asks for", string.Join(", ", technique.Demands.Select(d => d.Replace('-', ' ')))),
        ("loads", LoadText.Of(technique.Load)),
        ("the partner", technique.PartnerLoad == default ? string.Empty : LoadText.Of(technique.PartnerLoad)),
        ("the support", technique.SupportLoad == default ? string.Empty : LoadText.Of(technique.SupportLoad)),
        ("while holding", Holding(technique)),
        ("of the room", Room(technique.Uses, book)),
        ("with a prop", WithProp(technique.Prop, book)),
        ("hazard", technique.Hazard),
        ("kept safe", technique.Safety));

    public static string Of(Attack attack, Book book) => Card(
        $"{attack.Name} ({attack.Id})",
        ("kind", "attack, comes by " + attack.Arrives),
        ("also called", string.Join(", ", attack.Aliases)),
        ("line", $"{Words.Of(attack.Line.Kind)}, at the hero's {(attack.Line.Side == LineSide.Centre ? "centre" : Words.Of(attack.Line.Side) + " side")}"),
        ("attacker stands", Window(attack.From)),
        ("distance", Band(attack.Contact)),
        ("takes", Takes(attack.Length, attack.FewestSeconds)),
        ("answered by", string.Join(", ", book.Techniques.Where(t => t.Answers.Contains(attack.Line)).Select(t => Words.Low(t.Name)))),
        ("leaves open", attack.LeavesOpen),
        ("asks for", string.Join(", ", attack.Demands.Select(d => d.Replace('-', ' ')))),
        ("loads", LoadText.Of(attack.Load)),
        ("of the room", Room(attack.Uses, book)),
        ("with a prop", WithProp(attack.Prop, book)),
        ("hazard", attack.Hazard),
        ("kept safe", attack.Safety));

    public static string Of(Reaction reaction, Book book) => Card(
        $"{reaction.Name} ({reaction.Id})",
        ("kind", "reaction" + (reaction.Fall == FallClass.None ? string.Empty : $", a fall ({EnumWords.Of(reaction.Fall)})")),
        ("the blow", reaction.AnswersBlow ? "does not hit: they answer it" : string.Empty),
        ("also called", string.Join(", ", reaction.Aliases)),
        ("leaves them", reaction.Posture is { } posture ? Words.Of(posture) : "as before"),
        ("open for", Seconds(reaction.OpenSeconds)),
        ("ready after", Seconds(reaction.ReadySeconds) + (reaction.NoviceReadySeconds is { } novice ? $" (novice {Seconds(novice)})" : string.Empty)),
        ("sent back", reaction.Back.ToString()),
        ("lies", reaction.Lies switch { Lying.FeetNear => "feet towards the mark, where the way back ends", Lying.Across => "square to the line from the mark, the middle where the way back ends", _ => string.Empty }),
        ("skill", Words.Of(reaction.Skill)),
        ("floor", Words.Of(reaction.Surface)),
        ("of the room", Room(reaction.Uses, book)),
        ("with a prop", WithProp(reaction.Prop, book)),
        ("loads", LoadText.Of(reaction.Load)),
        ("comes from", string.Join(", ", book.Techniques.Where(t => t.Reactions.Contains(reaction.Id, StringComparer.Ordinal)).Select(Plain).Distinct(StringComparer.Ordinal))),
        ("sold by", reaction.Sell),
        ("risk", reaction.Risk));

    /// <summary>The name as it is read within a sentence, without a side: one card stands for both.</summary>
    internal static string Plain(Technique technique) => Words.Low(SideWords.WithoutSide(technique.Name, technique.Side));

    private static string Card(string title, params ReadOnlySpan<(string Label, string Words)> rows)
    {
        var lines = new List<string>(Page.Wrap(title, Page.Width));
        foreach (var (label, words) in rows)
        {
            lines.AddRange(Page.Hang("  " + Page.Pad(label, Label), words));
        }

        return string.Concat(lines.Select(l => l + "\n"));
    }

    /// <summary>The thing that it needs, and the kinds of things that may be it; nothing where it needs none.</summary>
    private static string Room(ThingNeed? need, Book book) => need is null
        ? string.Empty
        : $"{FloorThings.Wanted(need)}{(need.Where == ThingPlace.OnTheWay ? string.Empty : $", within {need.Within}")}: {string.Join(", ", book.Things.Kinds.Where(k => k.Uses.Contains(need.Use)).Select(k => k.Name))}";

    /// <summary>The prop that it is done with, what becomes of it, and the kinds that may be it; nothing where it needs none.</summary>
    private static string WithProp(PropNeed? need, Book book)
    {
        if (need is null)
        {
            return string.Empty;
        }

        var whose = need.Holder switch { PropHolder.Hero => " of the hero", PropHolder.Attacker => " of the attacker", _ => " from the floor" };
        var two = (need.Hand ?? need.Into) is { } hand ? hand == PropHand.Both : (bool?)null;
        var becomes = need.Then == PropFate.Keeps ? string.Empty : $", {EnumWords.Of(need.Then)}";
        return $"{PropWords.Of(need.Use)}{PropWords.HeldIn(need.Hand)}{whose}{becomes}: {string.Join(", ", book.Props.Kinds.Where(k => k.Uses.Contains(need.Use) && (two ?? k.Hands == 2) == (k.Hands == 2)).Select(k => k.Name))}";
    }

    /// <summary>What becomes of somebody whom the hero holds meanwhile.</summary>
    private static string Holding(Technique technique) => technique switch
    {
        { CarriesHeld: true } => "yes, whoever is held is taken along",
        { WhileHolding: true } => "yes, somebody else may stay held",
        _ => "no",
    };

    private static string Kind(ContactKind kind) => kind switch
    {
        ContactKind.NonContact => "without contact",
        ContactKind.Contact => "light contact",
        _ => "done together",
    };

    private static string Window(Window window) =>
        window.IsAnywhere ? "anywhere" : $"{Words.Clock(window.From)} to {Words.Clock(window.To)}, with the hero facing 12";

    private static string Band(Band band)
    {
        var step = band.StepIn > default(Centimetres) || band.StepOut > default(Centimetres) ? $"; steps in up to {band.StepIn}, out up to {band.StepOut}" : string.Empty;
        var behind = band.Behind > default(Centimetres) ? $"; an attack stops {band.Behind} farther out, behind whoever is put between" : string.Empty;
        return $"{Words.Number(band.From)} to {Words.Number(band.To)} times the {Words.Of(band.Limb)}{step}{behind}";
    }

    /// <summary>How long at the usual tempo, and from which tempos on how much longer.</summary>
    private static string Takes(HalfCounts length, decimal fewest)
    {
        var (words, last) = (Words.Span(length), length);
        for (var tempo = Tempo.Default.CountsPerMinute + 1; tempo <= Tempo.Fastest; tempo++)
        {
            var now = new Tempo(tempo).Lasting(length, fewest);
            words += now == last ? string.Empty : $", {now.ToSpanText()} from tempo {Words.Number(tempo)}";
            last = now;
        }

        return $"{words}; never less than {Words.Number(fewest)} s";
    }

    private static string Seconds(decimal? seconds) => seconds is { } s ? Words.Number(s) + " s" : string.Empty;
}
