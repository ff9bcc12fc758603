using Generator.Figures.Bodies;
using Generator.Figures.Poses;
using Generator.Figures.Posing;
using Generator.Library;
using Generator.Library.Loading;

namespace Generator.Figures.Tests;

/// <summary>The library and its poses, read once.</summary>
internal static class Library
{
    public static Book Book { get; } = LibraryLoader.LoadBundled().Value!;

    public static PoseBook Poses { get; } = Good(PoseReader.LoadBundled(Book));

    public static string File => Path.Combine(LibraryLoader.BundledFolder, "poses.json");

    public static IEnumerable<Card> Cards(double hero, double attacker, double at)
    {
        var cards = new Cards(Poses, Book, hero, attacker);
        return Book.Techniques.DistinctBy(t => t.BaseId, StringComparer.Ordinal).Select(t => cards.Of(t, at))
            .Concat(Book.Attacks.DistinctBy(a => a.BaseId, StringComparer.Ordinal).Select(a => cards.Of(a, at)))
            .Concat(Book.Reactions.Select(r => cards.Of(r))).OfType<Card>();
    }

    public static IEnumerable<(Card Card, Frame Frame, Figure Figure)> Figures(IEnumerable<Card> cards) =>
        from card in cards
        from frame in new[] { card.Start, card.Contact, card.End }
        from figure in new[] { frame.Hero, frame.Attacker }
        where figure is not null
        select (card, frame, figure);

    private static PoseBook Good(Generator.Library.Reading.Read<PoseBook> read) => read.IsGood ? read.Value : throw new InvalidOperationException(read.ToText());
}
