using System.Globalization;
using Generator.Domain;
using Generator.Domain.Sketches;
using Generator.Library.Reading;
using Generator.Library.Words;

namespace Generator.Library.Files.Notes;

/// <summary>Turns the lines of notes that hold moves into moves of a sketch.</summary>
internal sealed class MoveNotes(MeaningFinder finder, NotesCast cast, Action<int, NotesFault> refuse)
{
    private static readonly string[] Numbers = ["two", "three", "four"];

    private readonly CellReader cells = new(finder, refuse);
    private readonly AttackList list = new(finder);
    private readonly HashSet<int> seen = [];
    private (HalfCounts First, int Line)? latest;

    public IReadOnlyList<Understood> Understood => cells.Understood;

    public IReadOnlyList<SketchMove> Read(NotesLine line) => line.Kind switch
    {
        NotesLineKind.Gap => [cells.Gap(line.Number, "...", line.Rest)],
        NotesLineKind.Beat => [.. Beat(line).Select(m => m with { ByAlly = line.ByAlly })],
        _ => [.. Moves(line).Select(m => m with { ByAlly = line.ByAlly })],
    };

    /// <summary>Something without a name: a pause, or a line whose colon was forgotten.</summary>
    private IEnumerable<SketchMove> Beat(NotesLine line)
    {
        var name = line.Rest.Text.Split([' ', '\t', ';', '-', ','], 2)[0];
        var isKnown = cast.Names.Find(name) >= 0;
        if (line.AtArrows().Count > 1 || isKnown || string.Equals(name, cast.HeroName, StringComparison.OrdinalIgnoreCase))
        {
            refuse(line.Number, new NotesFault(
                line.Rest.Column,
                "There is no colon behind the name of the attacker.",
                isKnown ? $"Maybe write it behind {name}, such as {name}: swing > duck" : "Maybe write the name and a colon first, such as Bruno: swing > duck"));
            yield break;
        }

        var words = NotesWords.Of(line.Rest);
        cells.NextMove();
        if (words.Reaction is not null)
        {
            refuse(line.Number, new NotesFault(words.Reaction.Words.Column, "Nobody is named who could take it so.", "Maybe write the name of the attacker and a colon first."));
        }

        if (finder.Beat(words.Text).Ids.Count == 0)
        {
            var isKnownMove = finder.Technique(words.Text).Ids.Count > 0;
            refuse(line.Number, new NotesFault(
                words.Words.Column,
                isKnownMove ? $"Nobody is named to whom {FieldText.Quote(words.Text)} is done." : $"{FieldText.Quote(words.Text)} is neither a beat that the library knows nor a line with a name and a colon.",
                isKnownMove ? "Maybe write the name of the attacker, a colon and an arrow first, such as Bruno: > jab" : "Maybe write a name first, such as Bruno: swing > duck; a beat is written as pause, a place for further moves as ..."));
            yield break;
        }

        yield return new SketchMove { Line = line.Number, FollowsUp = true, Technique = cells.Cell(line.Number, words, finder.Beat), Count = Count(line, words) };
    }

    private IEnumerable<SketchMove> Moves(NotesLine line)
    {
        var parts = line.AtArrows();
        if (Attacker(line) is not { } attacker)
        {
            yield break;
        }

        if (line.Rest.Text.AsSpan().IndexOfAny('<', '←') is >= 0 and var turned)
        {
            refuse(line.Number, new NotesFault(line.Rest.Column + turned, "The arrow points the wrong way.", "Maybe write the attack first, then >, then what the hero does: swing > duck"));
            yield break;
        }

        if (parts.Count > 2)
        {
            refuse(line.Number, new NotesFault(parts[2].Column, "There is a second arrow on this line; behind the first stands all that the hero does.", "Maybe a comma is meant, such as: swing > duck, cross; the next attack stands on a line of its own."));
            yield break;
        }

        if (parts.Count == 1 && parts[0].IsEmpty)
        {
            refuse(line.Number, new NotesFault(line.Name.Length + 2, $"Nothing is said behind {line.Name}.", "Maybe write what they do, an arrow, and what the hero does, such as: swing > duck"));
            yield break;
        }

        var hurts = new HurtNotes(f => refuse(line.Number, f));
        parts = [.. parts.Select(hurts.Cut)];
        var left = NotesWords.Of(parts[0]);
        (line, left) = Placed(line, left);
        CheckLeft(line, left, parts);
        if (parts.Count == 1 && finder.End(left.Text) is { } end)
        {
            cells.NextMove();
            yield return new SketchMove { Line = line.Number, Attacker = attacker, FollowsUp = true, Technique = cells.Cell(line.Number, left, _ => end), Count = Count(line, left) };
            yield break;
        }

        var attacks = parts.Count == 1 ? [left.Words] : list.Of(left.Words);
        if (attacks.Count > 1)
        {
            cells.Tell(line.Number, left.Text, $"{attacks.Count.ToString(CultureInfo.InvariantCulture)} attacks, one behind the other: each is a move of its own", ofMove: false);
        }

        else if (attacks[0] != left.Words)
        {
            cells.Tell(line.Number, left.Text, $"nothing is taken of it but {FieldText.Quote(attacks[0].Text)}", ofMove: false);
        }

        for (var i = 0; i < attacks.Count; i++)
        {
            var own = left with { Words = attacks[i], Count = i == 0 ? left.Count : null, Faults = i == 0 ? left.Faults : [] };
            var (attack, from) = (own.Words.IsEmpty ? null : cells.Attack(line.Number, own, nextMove: true), i == 0 ? From(line, attacker, own) : null);
            var moves = parts.Count == 1 ? [Suffered(line, attacker, attack, own, hurts)] : Answered(line, attacker, attack, own, parts[1], AttackList.Share(parts[1], i, attacks.Count), hurts);
            foreach (var (move, n) in moves.Select((m, n) => (m, n)))
            {
                yield return n == 0 ? move with { From = from } : move;
            }
        }
    }

    /// <summary>An attack alone: it lands.</summary>
    private SketchMove Suffered(NotesLine line, int attacker, SketchCell? attack, NotesWords left, HurtNotes hurts)
    {
        cells.NextMove();
        cells.Tell(line.Number, left.Text, "lands: nothing is said of what the hero does");
        return Hurting(new SketchMove { Line = line.Number, Attacker = attacker, Attack = attack, IsSuffered = true, Count = Count(line, left) }, hurts.Between(0, int.MaxValue));
    }

    private IEnumerable<SketchMove> Answered(NotesLine line, int attacker, SketchCell? attack, NotesWords left, NotesPart right, List<NotesPart> listed, HurtNotes hurts)
    {
        var first = true;
        for (var c = 0; c < listed.Count; c++)
        {
            var cell = listed[c];
            var hurt = hurts.Between(c == 0 && cell.Column <= right.Column ? 0 : cell.Column, AttackList.NextColumn(right, cell));
            var words = NotesWords.Of(cell);
            var isAnswer = first && !left.Words.IsEmpty;
            if (words.Words.IsEmpty && !(right.IsEmpty || AttackList.IsOpen(listed)) && words.Reaction is null)
            {
                refuse(line.Number, NoWords(cell, right));
                continue;
            }

            var (times, plain) = Times(words);
            for (var i = 0; i < times; i++)
            {
                cells.NextMove();
                if (plain.Words.IsEmpty)
                {
                    cells.Tell(line.Number, ">", "the hero does anything");
                }

                if (first && left.Count is not null && words.Count is { } twice)
                {
                    refuse(line.Number, new NotesFault(twice.Column, "The count of this move stands left of the arrow already.", "Maybe one of the two can go."));
                }

                yield return Hurting(new SketchMove
                {
                    Line = line.Number,
                    Attacker = attacker,
                    Attack = isAnswer ? attack : null,
                    FollowsUp = !isAnswer,
                    Technique = plain.Words.IsEmpty ? null : cells.Technique(line.Number, plain, isAnswer ? attack : null, isAnswer),
                    Reaction = plain.Reaction is { } taken ? cells.Reaction(line.Number, taken) : null,
                    Count = i > 0 ? null : Count(line, first && left.Count is not null ? left : words),
                }, i == times - 1 ? hurt : null);
                (first, isAnswer) = (false, false);
            }
        }
    }

    /// <summary>The move with what it hurts.</summary>
    private SketchMove Hurting(SketchMove move, (NotesPart Text, Hurt What)? hurt)
    {
        if (hurt is not var (text, what))
        {
            return move;
        }

        cells.TellHurt(move.Line, text.Text, what);
        if (move.Count is { } count && what.Until <= count.First)
        {
            refuse(move.Line, new NotesFault(text.Column, HurtWords.TooSoon(what, count.First), "Maybe a later count is meant."));
        }

        return move with { Hurts = what };
    }

    private static NotesFault NoWords(NotesPart cell, NotesPart right) => cell switch
    {
        { IsEmpty: false, Text.Length: 1 } => new NotesFault(cell.Column, $"{cell.Text} stands behind no word.", "Maybe the move before it is missing."),
        { IsEmpty: false } => new NotesFault(cell.Column, $"{FieldText.Quote(cell.Text)} begins with a mark that belongs behind the words.", "Maybe put it behind them."),
        _ => new NotesFault(
            cell.Column,
            cell.Column >= right.Column + right.Text.Length ? "Nothing stands behind the last comma." : cell.Column <= right.Column ? "Nothing stands before the first comma." : "Nothing stands between two commas.",
            "Maybe one comma can go; a move that may be anything is written as ... on a line of its own."),
    };

    private int? Attacker(NotesLine line)
    {
        var isHeroTurned = string.Equals(line.Name, "Hero", StringComparison.OrdinalIgnoreCase) && line.AtArrows().Count == 1;
        if (!isHeroTurned && cast.Names.Find(line.Name) is >= 0 and var attacker)
        {
            return attacker;
        }

        var fault = line.Name.Length == 0 ? new NotesFault(1, "No name stands before the colon.", NearestWords.OneOf(cast.Names.Names))
            : isHeroTurned
                ? new NotesFault(1, "The hero's line begins with their name.", $"Maybe write {FieldText.Shorten(line.Rest.Text)}: the hero")
            : string.Equals(line.Name, cast.HeroName, StringComparison.OrdinalIgnoreCase)
                ? new NotesFault(1, $"{line.Name} is the hero; a line begins with the attacker to whom something is done.", $"Maybe write {cast.Names.Names.FirstOrDefault("Bruno")}: > and what {line.Name} does; a beat alone stands on a line of its own, such as: pause")
            : new NotesFault(1, Cast.Unknown(line.Name), cast.Names.Advice(line.Name));
        refuse(line.Number, fault);
        return null;
    }

    private void CheckLeft(NotesLine line, NotesWords left, IReadOnlyList<NotesPart> parts)
    {
        if (left.Reaction is { } taken)
        {
            refuse(line.Number, new NotesFault(taken.Words.Column, "Brackets hold how the attacker takes what the hero does; before the arrow there is nothing to take.", "Maybe they belong behind what the hero does, such as: swing > uppercut (head back)"));
        }

        if (left.Words.IsEmpty && (left.Firmness != Firmness.Said || left.Count is not null))
        {
            refuse(line.Number, new NotesFault(parts[0].Column, $"{FieldText.Quote(parts[0].Text)} stands behind no word.", "Maybe it belongs behind what the hero does."));
        }

        var attacks = left.Words.Listed().ToList();
        if (attacks.Count > 1 && parts.Count == 1)
        {
            refuse(line.Number, new NotesFault(attacks[1].Column, "There is no arrow, so all of this would be one attack.", $"Maybe an arrow is missing: {line.Name}: {FieldText.Shorten(attacks[0].Text)} > {FieldText.Shorten(string.Join(", ", attacks.Skip(1).Select(a => a.Text)))}"));
        }
    }

    /// <summary>"Swings from behind" says where they come from, unless an attack is called so ("grabs from behind").</summary>
    private (NotesLine Line, NotesWords Left) Placed(NotesLine line, NotesWords left)
    {
        var at = left.Text.LastIndexOf(" from ", StringComparison.OrdinalIgnoreCase);
        return at > 0 && line.From is null && FromWords.TryParse(left.Text[(at + 6)..], out _) && finder.Attack(left.Text).Unread.Count > finder.Attack(left.Text[..at]).Unread.Count
            ? (line with { From = NotesPart.Of(left.Text, left.Words.Column, at + 6, left.Text.Length) }, left with { Words = NotesPart.Of(left.Text, left.Words.Column, 0, at) })
            : (line, left);
    }

    /// <summary>Where they come from; the first time it is where they open, unless that is said elsewhere.</summary>
    private Bearing? From(NotesLine line, int attacker, NotesWords attack)
    {
        var isFirst = seen.Add(attacker);
        if (line.From is not { } from)
        {
            return null;
        }

        if (cells.From(line.Number, from) is not { } bearing)
        {
            return null;
        }

        if (attack.Words.IsEmpty)
        {
            refuse(line.Number, new NotesFault(from.Column, "Nobody comes from anywhere in a follow-up: the attacker is with the hero already.", "Maybe leave the place out, or write before the arrow how they come in, such as: rushes >"));
            return null;
        }

        cells.Tell(line.Number, "from " + from.Text, $"{cast.Names.Names[attacker]} {(isFirst && !cast.IsPlaced(attacker) ? "opens" : "comes")} at {bearing.ToClockText()}", ofMove: false);
        return isFirst && !cast.IsPlaced(attacker) ? null : bearing;
    }

    /// <summary>"Two to the face" is twice "to the face".</summary>
    private static (int Times, NotesWords Words) Times(NotesWords words)
    {
        var gap = words.Text.IndexOf(' ', StringComparison.Ordinal);
        var times = gap < 0 ? -1 : Array.IndexOf(Numbers, words.Text[..gap].ToLowerInvariant());
        return times < 0 || words.Text.Contains("hand", StringComparison.OrdinalIgnoreCase) || words.Text.Contains("arm", StringComparison.OrdinalIgnoreCase)
            ? (1, words) : (times + 2, words with { Words = NotesPart.Of(words.Text, words.Words.Column, gap + 1, words.Text.Length) });
    }

    /// <summary>The counts of a move; they go upward as the lines do.</summary>
    private (HalfCounts First, HalfCounts Last)? Count(NotesLine line, NotesWords words)
    {
        if (words.Count is not { } said || cells.Count(line.Number, said) is not { } count)
        {
            return null;
        }

        if (latest is { } before && count.Last < before.First)
        {
            refuse(line.Number, new NotesFault(said.Column, $"Count {count.Last.ToCountText()} comes before count {before.First.ToCountText()} on line {before.Line.ToString(CultureInfo.InvariantCulture)}.", "Maybe the lines are to change places: moves stand in the order in which they start."));
        }

        latest = (count.First, line.Number);
        return count;
    }
}
