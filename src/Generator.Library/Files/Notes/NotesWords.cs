using Generator.Domain.Sketches;
using Generator.Library.Reading;

namespace Generator.Library.Files.Notes;

/// <summary>The words of one cell of notes with what stands round them in any order: <c>!</c> or <c>?</c>, a reaction in brackets, counts behind <c>@</c>.</summary>
/// <param name="Words">The words themselves.</param>
/// <param name="Firmness">How much they are wanted.</param>
/// <param name="Reaction">What stands in brackets; null where nothing does.</param>
/// <param name="Count">What stands behind <c>@</c>; null where nothing does.</param>
/// <param name="Faults">What is wrong with the form.</param>
internal sealed record NotesWords(NotesPart Words, Firmness Firmness, NotesWords? Reaction, NotesPart? Count, IReadOnlyList<NotesFault> Faults)
{
    private const string Signs = "(@!?";

    public string Text => Words.Text;

    /// <summary>One cell.</summary>
    public static NotesWords Of(NotesPart cell)
    {
        var (text, column) = (cell.Text.Replace('[', '(').Replace(']', ')'), cell.Column);
        var faults = new List<NotesFault>();
        var at = Next(text, 0);
        var read = new NotesWords(NotesPart.Of(text, column, 0, at), Firmness.Said, null, null, faults);
        while (at < text.Length)
        {
            var (sign, start) = (text[at], at);
            var isTwice = false;
            switch (sign)
            {
                case '!' or '?':
                    (isTwice, at) = (read.Firmness != Firmness.Said, at + 1);
                    read = read with { Firmness = sign == '!' ? Firmness.Fixed : Firmness.Wish };
                    break;
                case '(':
                    (isTwice, at) = (read.Reaction is not null, text.IndexOf(')', start));
                    if (at < 0)
                    {
                        faults.Add(new NotesFault(column + start, "The bracket is not closed.", "Maybe put a ) behind how the attacker takes it, such as: uppercut (head back)"));
                        at = text.Length;
                    }

                    read = read with { Reaction = Of(NotesPart.Of(text, column, start + 1, at)) };
                    at = Math.Min(at + 1, text.Length);
                    break;
                case '@':
                    (isTwice, at) = (read.Count is not null, Next(text, start + 1));
                    read = read with { Count = NotesPart.Of(text, column, start + 1, at) };
                    break;
                default:
                    at = Next(text, start);
                    var behind = NotesPart.Of(text, column, start, at);
                    faults.Add(new NotesFault(behind.Column, $"{FieldText.Quote(behind.Text)} stands behind the move and belongs to nothing.", "Maybe a comma is missing before it."));
                    break;
            }

            if (isTwice)
            {
                faults.Add(new NotesFault(column + start, $"There is a second {(sign == '(' ? "pair of brackets" : sign == '@' ? "count" : "mark")} here.", "Maybe a comma is missing before the next move."));
            }

            while (at < text.Length && char.IsWhiteSpace(text[at]))
            {
                at++;
            }
        }

        if (read.Words.Text.Contains(')', StringComparison.Ordinal))
        {
            faults.Add(new NotesFault(column + text.IndexOf(')', StringComparison.Ordinal), "A bracket closes here that was never opened.", "Maybe put a ( before how the attacker takes it."));
        }

        return read;
    }

    /// <summary>Place of the next sign; the end of the text for none.</summary>
    private static int Next(string text, int from) => text.AsSpan(from).IndexOfAny(Signs) is >= 0 and var i ? from + i : text.Length;
}
