using System.CommandLine;
using Generator.Cli.Options;
using Generator.Cli.Work;
using Generator.Domain;
using Generator.Library;
using Generator.Library.Reading;
using Generator.Library.Words;
using Generator.Paperwork.Text;

namespace Generator.Cli.Commands;

/// <summary><c>generator library show</c>.</summary>
internal static class LibraryShowCommand
{
    public static Command Of(Desk desk)
    {
        var name = new Argument<string>("NAME") { Description = "Id, name or notebook word of a technique, attack or reaction; the side may stand before or after it." };
        CommonOptions.RefuseOptions(name);
        var library = CommonOptions.Library();
        var picture = new Option<string?>(Pictures.Option) { HelpName = "FILE", Description = "Draws the first of them as well, as a blocking picture in SVG, or PNG where there is Chromium: contact and sell." };
        var command = new HouseCommand("show", "Shows one record whole: how long it takes, what it needs, what comes before and after, how it is kept safe.") { name, library, picture };
        command.Example = "generator library show \"parry down left\"";
        command.SetAction(parsed =>
        {
            var (book, word, file) = (Inputs.Book(parsed.GetValue(library)), parsed.GetRequiredValue(name), parsed.GetValue(picture));
            var cards = CardsOf(book, word);
            if (file is not null)
            {
                Pictures.Draw(desk, file, book, word);
            }

            desk.Out.Write(cards);
            return ExitCode.Good;
        });
        return command;
    }

    /// <summary>All cards that the word may stand for; of a sided record without a side the left one, as the right one mirrors it.</summary>
    private static string CardsOf(Book book, string word)
    {
        var finder = new WordFinder(book);
        var (technique, attack, reaction) = (finder.Technique(word), finder.Attack(word), finder.Reaction(word));
        IReadOnlyList<string> cards =
        [
            .. Techniques(technique.Found, book),
            .. attack.Found.DistinctBy(a => a.BaseId, StringComparer.Ordinal).Select(a => LibraryCard.Of(a, book)),
            .. reaction.Found.Select(r => LibraryCard.Of(r, book)),
        ];
        if (cards.Count > 0)
        {
            return string.Join('\n', cards);
        }

        var near = NearestWords.Of(word, technique.Suggestions.Concat(attack.Suggestions).Concat(reaction.Suggestions));
        var shown = near.Count > 0 ? near : technique.Suggestions;
        throw new RefusedException(
            $"generator library show: {(technique.IsTooWide ? $"{FieldText.Quote(word)} stands for too much" : $"there is no {FieldText.Quote(word)} in the library")}.",
            shown.Count > 0 ? $"Maybe one of these is meant: {string.Join(", ", shown)}." : "Maybe generator library list shows the word.");
    }

    /// <summary>The cards of techniques, with what may come before and after.</summary>
    private static IEnumerable<string> Techniques(IReadOnlyList<Technique> found, Book book) =>
        found.DistinctBy(t => t.BaseId, StringComparer.Ordinal).Select(t => LibraryCard.Of(t, book) + LibraryNeighbours.Of(t, book));
}
