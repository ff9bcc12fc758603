using System.Globalization;
using Generator.Domain;
using Generator.Domain.Sketches;
using Generator.Library.Reading;
using Generator.Library.Words;

namespace Generator.Library.Files.Notes;

/// <summary>Reads cells of a sketch, out of notes or out of rows, and keeps what each was taken for.</summary>
internal sealed class CellReader(MeaningFinder finder, Action<int, NotesFault> refuse)
{
    private static readonly char[] Dashes = ['-', '–', '—'];

    private readonly List<Understood> understood = [];
    private readonly List<(SketchCell Cell, int Line, bool IsAnswer)> attacks = [], techniques = [];
    private int move;

    public IReadOnlyList<Understood> Understood => understood;

    /// <summary>What is read from here on belongs to the next move.</summary>
    public void NextMove() => move++;

    /// <summary>Keeps what was understood, in words.</summary>
    public void Tell(int line, string text, string meaning, bool ofMove = true) => understood.Add(new Understood(line, ofMove ? move : 0, text, [meaning]) { IsPlain = true });

    /// <summary>Keeps what a move hurts.</summary>
    public void TellHurt(int line, string text, Hurt hurt) => Tell(line, text, $"hurts the {hurt.PartInWords} until count {hurt.Until.ToCountText()}");

    /// <summary>What the attacker does; "same again" is the attack said last.</summary>
    public SketchCell? Attack(int line, NotesWords words, bool nextMove = false) => Kept(attacks, line, true, Repeated(attacks, line, words, _ => true, isAttack: true, nextMove) ?? Cell(line, words, finder.Attack, nextMove));

    /// <summary>What the hero does about an attack, or as a follow-up: "same again" is then what was done about the attack before, or just before.</summary>
    public SketchCell? Technique(int line, NotesWords words, SketchCell? attack, bool isAnswer) => Kept(techniques, line, isAnswer,
        Repeated(techniques, line, words, t => t.IsAnswer || !isAnswer, isAttack: false, nextMove: false) ?? Cell(line, words, attack is null ? finder.Technique : t => finder.Technique(t, attack.Ids)));

    /// <summary>How the attacker takes it.</summary>
    public SketchCell? Reaction(int line, NotesWords words)
    {
        if (!WideWords.IsAnySell(words.Text))
        {
            return Cell(line, words, finder.Reaction);
        }

        Tell(line, words.Text, "sold in any way");
        return null;
    }

    private static SketchCell? Kept(List<(SketchCell Cell, int Line, bool IsAnswer)> said, int line, bool isAnswer, SketchCell? cell)
    {
        if (cell is not null)
        {
            said.Add((cell, line, isAnswer));
        }

        return cell;
    }

    /// <summary>What words such as "same again" point back to; null when they do not, or to nothing.</summary>
    private SketchCell? Repeated(List<(SketchCell Cell, int Line, bool IsAnswer)> said, int line, NotesWords words, Func<(SketchCell Cell, int Line, bool IsAnswer), bool> mayBe, bool isAttack, bool nextMove)
    {
        if (RepeatWords.Of(words.Text) is not { } repeat)
        {
            return null;
        }

        var before = said.Where(mayBe).ToList();
        var earlier = repeat.Family is null || isAttack ? before.LastOrDefault() : before.LastOrDefault(s => finder.FamilyOf(s.Cell.Ids[0]) == repeat.Family, before.LastOrDefault(s => s.Line < line));
        if (earlier.Cell is null)
        {
            return null;
        }

        var ids = earlier.Cell.Ids;
        SketchFoot? foot = null;
        string[] unread = [];
        if (repeat.IsOther && finder.OtherSide(ids) is { } mirrored)
        {
            ids = mirrored;
        }
        else if (repeat.IsOther && isAttack)
        {
            unread = ["other"];
        }
        else if (repeat.IsOther)
        {
            foot = SketchFoot.Other;
        }

        understood.Add(new Understood(line, nextMove ? move + 1 : move, words.Text, ids)
        {
            Unread = unread,
            Also = [string.Create(CultureInfo.InvariantCulture, $"again what line {earlier.Line} says: {FieldText.Quote(earlier.Cell.Text)}"), .. Also(foot, words.Firmness)],
        });
        return new SketchCell(words.Text, ids, words.Firmness, foot);
    }

    /// <summary>The set that the words allow; null once they have been refused.</summary>
    /// <param name="line">Line from 1.</param>
    /// <param name="words">The words with what stands round them.</param>
    /// <param name="find">Finds what they may mean.</param>
    /// <param name="nextMove">They belong to the move that is about to begin.</param>
    public SketchCell? Cell(int line, NotesWords words, Func<string, Meaning> find, bool nextMove = false)
    {
        foreach (var fault in words.Faults)
        {
            refuse(line, fault);
        }

        if (words.Words.IsEmpty)
        {
            refuse(line, new NotesFault(words.Words.Column, "Nothing stands in the brackets.", "Maybe leave them out: what is not said is open."));
            return null;
        }

        var meaning = find(words.Text);
        if (meaning.Ids.Count == 0)
        {
            refuse(line, new NotesFault(words.Words.Column, $"The library knows nothing like {FieldText.Quote(words.Text)}.", meaning.Nearest.Count > 0 ? NearestWords.OneOf(meaning.Nearest) : "Maybe say it in other words."));
            return null;
        }

        understood.Add(new Understood(line, nextMove ? move + 1 : move, words.Text, meaning.Ids, meaning.IsGuess)
        {
            Unread = meaning.Unread,
            Also = [.. meaning.Respelt.Select(r => $"{FieldText.Quote(r.Written)} is taken for {FieldText.Quote(r.As)}"), .. Also(meaning.Foot, words.Firmness)],
        });
        return new SketchCell(words.Text, meaning.Ids, words.Firmness, meaning.Foot);
    }

    /// <summary>"20", "20&amp;" or "20-24"; null once it has been refused.</summary>
    public (HalfCounts First, HalfCounts Last)? Count(int line, NotesPart said)
    {
        var ends = said.Text.Split(Dashes, StringSplitOptions.TrimEntries);
        if (ends.Length > 2 || !HalfCounts.TryParseCount(ends[0], out var first) || !HalfCounts.TryParseCount(ends[^1], out var last))
        {
            refuse(line, new NotesFault(
                said.Column,
                said.IsEmpty ? "No count stands behind @." : $"{FieldText.Quote(said.Text)} is no count.",
                said.Text.EndsWith(".5", StringComparison.Ordinal) ? $"Maybe write @{said.Text[..^2]}& for the half count." : "Maybe write @20, @20& or @20-24."));
            return null;
        }

        if (last < first)
        {
            refuse(line, new NotesFault(said.Column, $"{FieldText.Quote(said.Text)} ends before it begins.", $"Maybe write @{last.ToCountText()}-{first.ToCountText()}."));
            return null;
        }

        Tell(line, "@" + said.Text, first == last ? "starts at count " + first.ToCountText() : $"starts between counts {first.ToCountText()} and {last.ToCountText()}");
        return (first, last);
    }

    /// <summary>A place for further moves: at most so many where a number stands behind the dots.</summary>
    /// <param name="line">Line from 1.</param>
    /// <param name="text">As written.</param>
    /// <param name="most">What stands behind the dots; empty for any number.</param>
    public SketchMove Gap(int line, string text, NotesPart most)
    {
        var open = Sketch.OpenMoves;
        if (!most.IsEmpty && !(int.TryParse(most.Text, NumberStyles.None, CultureInfo.InvariantCulture, out open) && open is >= 1 and <= 100))
        {
            refuse(line, new NotesFault(most.Column, $"{FieldText.Quote(most.Text)} is no number of moves that may stand here.", "Maybe write \"...\" for any number, or \"... 4\" for at most four."));
        }

        Tell(line, text, string.Create(CultureInfo.InvariantCulture, $"up to {open} moves may stand here"), ofMove: false);
        return new SketchMove { Line = line, Open = Math.Max(1, open) };
    }

    /// <summary>"behind", "2:30"; null once it has been refused.</summary>
    public Bearing? From(int line, NotesPart said)
    {
        if (FromWords.TryParse(said.Text, out var bearing))
        {
            return bearing;
        }

        refuse(line, new NotesFault(said.Column, $"{FieldText.Quote(said.Text)} says no place to come from.", $"Maybe one of these is meant: {FromWords.All}."));
        return null;
    }

    private static IEnumerable<string> Also(SketchFoot? foot, Firmness firmness)
    {
        if (foot is not null)
        {
            yield return foot switch
            {
                SketchFoot.Lead => "with the limb that leads in the stance at that moment",
                SketchFoot.Rear => "with the rear limb of the stance at that moment",
                SketchFoot.Near => "on the side that is nearer to the attacker at that moment",
                SketchFoot.Far => "on the side that is farther from the attacker at that moment",
                SketchFoot.Same => "on the side of what the hero did just before",
                _ => "on the other side than what the hero did just before",
            };
        }

        if (firmness != Firmness.Said)
        {
            yield return firmness == Firmness.Fixed ? "must stay" : "only a wish";
        }
    }
}
