using Generator.Domain;

namespace Generator.Library.Files;

/// <summary>The words of a library by which techniques, attacks and reactions are written in a notebook.</summary>
internal sealed class Vocabulary(Book book)
{
    public WordTable<Technique> Techniques { get; } =
        new("technique", book.Techniques, t => [t.Id, t.BaseId, t.Name, t.Name[..^SideEnding(t.Side, t.Name)], .. t.Aliases], t => t.Id);

    public WordTable<Attack> Attacks { get; } =
        new("attack", book.Attacks, a => [a.Id, a.BaseId, a.Name, a.Name[..^SideEnding(a.Side, a.Name)], .. a.Aliases], a => a.Id);

    public WordTable<Reaction> Reactions { get; } = new("reaction", book.Reactions, r => [r.Id, r.Name, .. r.Aliases], r => r.Id);

    private static int SideEnding(Side? side, string name)
    {
        var ending = side switch { Side.Left => " left", Side.Right => " right", _ => string.Empty };
        return name.EndsWith(ending, StringComparison.OrdinalIgnoreCase) ? ending.Length : 0;
    }
}
