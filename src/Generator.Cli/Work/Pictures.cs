using Generator.Figures.Painting;
using Generator.Figures.Poses;
using Generator.Figures.Posing;
using Generator.Library;
using Generator.Library.Words;

namespace Generator.Cli.Work;

/// <summary>Makes pictures of the records of a library.</summary>
internal static class Pictures
{
    /// <summary>Names the file of a picture.</summary>
    public const string Option = "--picture";

    /// <summary>The cards of a library with the poses that come with the program.</summary>
    public static Cards Of(Book book)
    {
        var read = PoseReader.LoadBundled(book);
        return read.IsGood ? new Cards(read.Value, book) : throw new RefusedException(read.ToText());
    }

    /// <summary>Draws the first record that a word stands for: a technique, else an attack, else a reaction.</summary>
    public static void Draw(string path, Book book, string word)
    {
        if (!path.EndsWith(".svg", StringComparison.OrdinalIgnoreCase))
        {
            throw new RefusedException($"{Option} {path}: pictures are drawn as SVG.", "Maybe end the name in .svg; every browser shows it and can save it as something else.");
        }

        Outputs.Check(path, Option);
        var (finder, cards) = (new WordFinder(book), Of(book));
        var drawn = finder.Technique(word).Found.Select(t => cards.Of(t))
            .Concat(finder.Attack(word).Found.Select(a => cards.Of(a)))
            .Concat(finder.Reaction(word).Found.Select(r => cards.Of(r))).OfType<Card>().FirstOrDefault()
            ?? throw new RefusedException($"{Option} {path}: there is no pose for {word}.", "Maybe one of the program's own records stands for it.");
        Outputs.Write(path, CardPicture.Svg(drawn), Option);
    }
}
