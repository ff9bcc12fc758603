using Generator.Domain;
using Generator.Library.Reading;

namespace Generator.Library.Words;

/// <summary>Left and right in what people write.</summary>
public static class SideWords
{
    /// <summary>The name of a sided record without the side at its end.</summary>
    public static string WithoutSide(string name, Side? side) =>
        side is { } s && name.EndsWith(" " + EnumWords.Of(s), StringComparison.Ordinal) ? name[..^(EnumWords.Of(s).Length + 1)] : name;

    /// <summary>The same of names in which the side is known from nothing else, such as other names.</summary>
    public static string WithoutSide(string name) =>
        WithoutSide(name, Side.Left) is var left && left.Length < name.Length ? left : WithoutSide(name, Side.Right);

    /// <summary>The side that one plain word names.</summary>
    public static Side? Parse(string word) => word switch
    {
        "left" or "l" => Side.Left,
        "right" or "r" => Side.Right,
        _ => null,
    };

    /// <summary>The side at the end or the beginning of a plain phrase, and the rest of it, without the hand of "right hand punch"; no side when there is none or nothing else.</summary>
    public static (string Phrase, Side? Side) Split(string plain)
    {
        var words = plain.Split(' ');
        if (words.Length > 1 && Parse(words[^1]) is { } last)
        {
            return (string.Join(' ', words[..^1]), last);
        }

        return words.Length > 1 && Parse(words[0]) is { } first ? (string.Join(' ', words[1] is "hand" && words.Length > 2 ? words[2..] : words[1..]), first) : (plain, null);
    }
}
