using System.Text.RegularExpressions;
using Generator.Domain;

namespace Generator.Library.Files.Notes;

/// <summary>"… and hurts her left knee until 24" on a line of notes: it belongs to the move behind which it stands.</summary>
internal sealed partial class HurtNotes(Action<NotesFault> refuse)
{
    private readonly List<(NotesPart Text, Hurt What)> said = [];

    /// <summary>The piece of the line without what it hurts; everything else stands where it stood.</summary>
    public NotesPart Cut(NotesPart piece) => new(
        Said().Replace(piece.Text, match =>
        {
            var what = NotesPart.Of(piece.Text, piece.Column, match.Groups["what"].Index, match.Index + match.Length);
            var (hurt, message, maybe) = HurtWords.Read(what.Text);
            if (hurt is null)
            {
                refuse(new NotesFault(what.Column, message, maybe));
            }
            else
            {
                said.Add((what, hurt));
            }

            return new string(' ', match.Length);
        }).TrimEnd(),
        piece.Column);

    /// <summary>What is said from one column of the line up to another; null for nothing.</summary>
    public (NotesPart Text, Hurt What)? Between(int from, int to)
    {
        var here = said.Where(s => s.Text.Column >= from && s.Text.Column < to).ToList();
        if (here.Count > 1)
        {
            refuse(new NotesFault(here[1].Text.Column, "One move hurts two parts of the body.", "Maybe a wider one is meant, such as left-leg or arms; or the second belongs to another move."));
        }

        return here.Count == 0 ? null : here[0];
    }

    [GeneratedRegex(@"(?:[,;]\s*)?(?:\b(?:and|which|that)\s+)?\bhurts\s+(?<what>[^,;(\[@!?]*)", RegexOptions.IgnoreCase)]
    private static partial Regex Said();
}
