using Generator.Domain;
using Generator.Library.Words;

namespace Generator.Library.Files;

/// <summary>The words of a library by which techniques, attacks and reactions are written in a notebook.</summary>
internal sealed class Vocabulary
{
    public Vocabulary(Book book)
    {
        var finder = new WordFinder(book);
        Techniques = new("technique", finder.Technique);
        Attacks = new("attack", finder.Attack);
        Reactions = new("reaction", finder.Reaction);
    }

    public WordTable<Technique> Techniques { get; }

    public WordTable<Attack> Attacks { get; }

    public WordTable<Reaction> Reactions { get; }
}
