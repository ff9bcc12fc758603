using System.Globalization;
using System.Xml.Linq;
using Generator.Figures.Painting;
using Generator.Figures.Poses;
using Generator.Figures.Posing;
using Generator.Library;
using Generator.Library.Words;
using Generator.Paperwork.Printing;

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
    public static void Draw(Desk desk, string path, Book book, string word)
    {
        var dots = path.EndsWith(".png", StringComparison.OrdinalIgnoreCase);
        if (!dots && !path.EndsWith(".svg", StringComparison.OrdinalIgnoreCase))
        {
            throw new RefusedException($"{Option} {path}: pictures are drawn as SVG or PNG.", "Maybe end the name in .svg or .png.");
        }

        Outputs.Check(path, Option);
        var (finder, cards) = (new WordFinder(book), Of(book));
        var drawn = finder.Technique(word).Found.Select(t => cards.Pictured(t))
            .Concat(finder.Attack(word).Found.Select(a => cards.Pictured(a)))
            .Concat(finder.Reaction(word).Found.Select(r => cards.Pictured(r))).OfType<Card>().FirstOrDefault()
            ?? throw new RefusedException($"{Option} {path}: there is no pose for {word}.", "Maybe one of the program's own records stands for it.");
        if (dots)
        {
            Outputs.Write(path, Dots(desk, path, CardPicture.Svg(drawn)), Option);
            return;
        }

        Outputs.Write(path, CardPicture.Svg(drawn), Option);
    }

    /// <summary>A browser draws them, as it prints the pack.</summary>
    private static byte[] Dots(Desk desk, string path, string svg)
    {
        try
        {
            var picture = XElement.Parse(svg);
            return desk.Camera() is { } camera
                ? camera($"<!DOCTYPE html><body style=\"margin:0\">{svg}</body>", Units("width"), Units("height"), desk.Stop)
                : throw new PrintException("there is no Chromium or Chrome on the search path");

            int Units(string side) => (int)Math.Ceiling(double.Parse(picture.Attribute(side)!.Value, CultureInfo.InvariantCulture));
        }
        catch (PrintException error)
        {
            throw new RefusedException($"{Option} {path}: a browser draws PNG, and {error.Message}.", "Maybe install Chromium, or end the name in .svg, which needs no browser.");
        }
    }
}
