using Generator.Library;
using Generator.Library.Files.Notes;
using Generator.Library.Reading;
using Generator.Library.Tests.Bundled;
using Generator.Library.Words;
using Generator.Testing;

namespace Generator.Library.Tests.Notes;

/// <summary>A word that means nothing is put anywhere into good notes: it is refused on its line, or told as unread there. Nothing is dropped in silence.</summary>
public class NoWordIsLostTests
{
    private const int Cases = 240;

    /// <summary>The first lines of good notes say who is who.</summary>
    private const int Cast = 3;

    private static readonly string[] Good =
    [
        "Zora: the hero, left lead, 1.70 m",
        "Bruno: 12, 2 m, fast",
        "Wanda: 2:30, 1.86 m tall, late",
        "Bruno: wide swing > low parry, elbow to the face",
        "Wanda from the left: comes in > push kick !",
        "Bruno: > uppercut (head back) @20-24, hook with the left ?",
        "... 4",
        "Bruno: takes her wrist",
        "Wanda: rushes @30 > a kick, two to the face",
        "pause @40",
        "Bruno from 2:30: flying punch > steps aside (falls short)",
    ];

    [Fact]
    public void A_word_that_means_nothing_is_never_dropped()
    {
        var (chance, places) = (new Chance(7), new SortedDictionary<string, int>(StringComparer.Ordinal));
        for (var i = 0; i < Cases; i++)
        {
            // Among the moves, the line and the one before it are read alone, which says the same and takes less.
            var drawn = chance.Whole(0, Good.Length - 1);
            int[] kept = [.. Enumerable.Range(0, Good.Length).Where(l => l < Cast || l == drawn || l == Math.Max(drawn, Cast + 1) - 1)];
            var (line, lines) = (Array.IndexOf(kept, drawn), kept.Select(l => Good[l]).ToArray());
            var gaps = Enumerable.Range(0, lines[line].Length + 1).Where(g => g == 0 || g == lines[line].Length || lines[line][g] == ' ').ToList();
            var junk = string.Concat(Enumerable.Range(0, 9).Select(_ => "bdfgkpqvwxz"[chance.Whole(0, 10)]));
            var gap = chance.One(gaps);
            lines[line] = (lines[line][..gap] + " " + junk + " " + lines[line][gap..]).Trim();
            var read = NotesReader.Parse(new SourceFile("a.notes.txt", string.Join('\n', lines) + "\n"), BundledLibrary.Book);
            var told = read.IsGood
                ? read.Value.Understood.Any(u => u.Line == line + 1 && (u.Unread.Contains(junk) || (u.IsPlain && u.Text.Contains(junk, StringComparison.Ordinal))))
                : read.Problems.Any(p => p.Line == line + 1 && p.Field.StartsWith("column ", StringComparison.Ordinal));
            Assert.True(told, $"{lines[line]}\n{(read.IsGood ? string.Join('\n', read.Value.Understood.Where(u => u.Line == line + 1)) : read.ToText())}");
            var place = $"{(read.IsGood ? "told" : "refused")}, line {drawn + 1}";
            places[place] = places.GetValueOrDefault(place) + 1;
        }

        Assert.All(Enumerable.Range(1, Good.Length), l => Assert.True(places.GetValueOrDefault($"told, line {l}") + places.GetValueOrDefault($"refused, line {l}") > 8));
        Assert.True(places.Where(p => p.Key.StartsWith("told", StringComparison.Ordinal)).Sum(p => p.Value) > 30);
    }

    /// <summary>Cells put together by chance from words of the library and of rough notes: each word is filler, or some record that was taken has it, or it says a limb or a repetition, or it is told as unread.</summary>
    [Fact]
    public void Each_word_of_a_cell_is_accounted_for_or_told()
    {
        var (book, chance) = (BundledLibrary.Book, new Chance(11));
        var finder = new MeaningFinder(book);
        string[] vocabulary = [.. book.Techniques.SelectMany(t => t.Aliases.Append(t.Name)).Concat(book.Attacks.SelectMany(a => a.Aliases.Append(a.Name))).SelectMany(n => PlainWord.Of(n).Split(' ')).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal),
            "the", "with", "same", "other", "again", "left", "right", "hand", "table", "slowly", "knee", "behind", "face"];
        var (taken, told, refused) = (0, 0, 0);
        for (var i = 0; i < Cases; i++)
        {
            string[] words = [.. Enumerable.Range(0, chance.Whole(1, 5)).Select(_ => chance.One(vocabulary))];
            var text = string.Join(' ', words);
            foreach (var (meaning, phrases) in new[]
            {
                (finder.Technique(text), Phrases(finder.Technique(text).Ids.Select(book.Technique).Select(t => (t.BaseId, t.Name, t.Aliases, EnumWords.Of(t.Family), EnumWords.Of(t.Height) + " " + t.Hazard)), book.Notebook.Techniques)),
                (finder.Attack(text), Phrases(finder.Attack(text).Ids.Select(book.Attack).Select(a => (a.BaseId, a.Name, a.Aliases, a.LimbWords, Library.Words.LineWords.Of(a.Line) + " " + a.Hazard)), book.Notebook.Attacks)),
            })
            {
                refused += meaning.Ids.Count == 0 ? 1 : 0;
                var known = phrases.SelectMany(book.Notebook.Tokens).ToHashSet(StringComparer.Ordinal);
                var unread = meaning.Unread.SelectMany(u => u.Split(' ')).ToHashSet(StringComparer.Ordinal);
                foreach (var word in meaning.Ids.Count == 0 || FamilyWords.Of(text) is not null ? [] : words)
                {
                    var isKnown = Enumerable.Range(2, Math.Max(0, word.Length - 3)).Any(at => book.Notebook.Tokens(word[..at] + " " + word[at..]) is { Count: > 0 } parts && parts.All(known.Contains))
                        || book.Notebook.Tokens(word) is var means && (means.Count == 0 || means.Any(known.Contains)) || book.Notebook.Tokens(text).Any(t => known.Contains(t) && !book.Notebook.Tokens(word).Contains(t) && IsPartOf(book.Notebook, text, word, t));
                    Assert.True(isKnown || unread.Contains(word) || meaning.Respelt.Any(r => r.Written.Split(' ').Contains(word)) || IsOfLimb(word, text, meaning), $"\"{word}\" of \"{text}\" is lost: {string.Join(", ", meaning.Ids)}; unread {string.Join(", ", meaning.Unread)}");
                    (taken, told) = (taken + (isKnown ? 1 : 0), told + (unread.Contains(word) ? 1 : 0));
                }
            }
        }

        Assert.True(taken > 400 && told > 200 && refused > 5, $"{taken} taken, {told} told, {refused} refused");
    }

    [Theory]
    [InlineData("Bruno: swing > low parry with the rear hand over the table", "table")]
    [InlineData("Bruno: wide swing at the window > duck", "window")]
    [InlineData("Bruno: lead swing > duck", "lead")]
    [InlineData("Bruno: takes the left lapel and pulls > thumb pull", "left")]
    [InlineData("Bruno: swing > duck; Bruno: swing > duck / cross", "cross")]
    [InlineData("Bruno: takes the other wrist > thumb pull", "other")]
    public void What_nothing_taken_speaks_of_is_told(string text, string unread) =>
        Assert.Contains(NotesReader.Parse(new SourceFile("a.notes.txt", text.Replace("; Bruno", "\nBruno", StringComparison.Ordinal)), BundledLibrary.Book).Value!.Understood, u => u.Unread.Contains(unread));

    [Theory]
    [InlineData("hook with the left to the body", "left", null)]
    [InlineData("far elbow to the head", null, Domain.Sketches.SketchFoot.Far)]
    [InlineData("punch to the ribs with the near hand", null, Domain.Sketches.SketchFoot.Near)]
    [InlineData("lead hook", null, Domain.Sketches.SketchFoot.Lead)]
    [InlineData("hook to the head with the same hand", null, Domain.Sketches.SketchFoot.Same)]
    [InlineData("low kick with the other leg", null, Domain.Sketches.SketchFoot.Other)]
    [InlineData("frees the left hand", "left", null)]
    [InlineData("frees the other", null, Domain.Sketches.SketchFoot.Other)]
    public void Limbs_are_read_where_they_act(string text, string? side, Domain.Sketches.SketchFoot? foot)
    {
        var meaning = new MeaningFinder(BundledLibrary.Book).Technique(text);
        Assert.Equal(foot, meaning.Foot);
        Assert.True(side is null || meaning.Ids.All(id => EnumWords.Of(BundledLibrary.Book.Technique(id).Side ?? Domain.Side.Left) == side), string.Join(", ", meaning.Ids));
    }

    private static List<string> Phrases(IEnumerable<(string Id, string Name, IReadOnlyList<string> Aliases, string Kind, string Else)> records, IReadOnlyDictionary<string, IReadOnlyList<string>> said) =>
        [.. records.SelectMany(r => (IEnumerable<string>)[r.Id, r.Name, r.Kind, r.Else, .. r.Aliases, .. said.GetValueOrDefault(r.Id, [])])];

    /// <summary>A piece of several words ("back fist") means one.</summary>
    private static bool IsPartOf(Notebook notebook, string text, string word, string means) => notebook.Pieces(text).Any(p => p.Means.Contains(means) && p.Written.Split(' ').Contains(word));

    /// <summary>It says which limb, or is one that is said so.</summary>
    private static bool IsOfLimb(string word, string text, Meaning meaning) =>
        (meaning.Foot is not null && (word is "lead" or "rear" or "near" or "far" or "same" or "other" || LimbWords.LimbBehind(text, LimbWords.FootOf(text)?.Word) == word))
        || (word is "left" or "right" && meaning.Ids.All(id => !id.EndsWith(word == "left" ? "-right" : "-left", StringComparison.Ordinal)));
}
