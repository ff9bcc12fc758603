using Generator.Domain;
using Generator.Library.Reading;

namespace Generator.Library.Words;

/// <summary>The words by which files name attack lines: kind and side, <c>high-straight-left</c>; the kind alone stands for all three sides.</summary>
public static class LineWords
{
    private static readonly Dictionary<string, IReadOnlyList<AttackLine>> Lines = Build();

    /// <summary>Every word, with and without side, in the order of kinds.</summary>
    public static IReadOnlyList<string> All { get; } = [.. Enum.GetValues<LineKind>().SelectMany(k => new[] { EnumWords.Of(k) }.Concat(Sides(k).Select(Of)))];

    /// <summary>The word of one line, with its side.</summary>
    public static string Of(AttackLine line) => EnumWords.Of(line.Kind) + "-" + EnumWords.Of(line.Side);

    /// <summary>The lines that a word names: one, or three when it names no side; empty for an unknown word.</summary>
    public static IReadOnlyList<AttackLine> Parse(string word) => Lines.GetValueOrDefault(word, []);

    private static IEnumerable<AttackLine> Sides(LineKind kind) => Enum.GetValues<LineSide>().Select(s => new AttackLine(kind, s));

    private static Dictionary<string, IReadOnlyList<AttackLine>> Build()
    {
        var lines = new Dictionary<string, IReadOnlyList<AttackLine>>(StringComparer.Ordinal);
        foreach (var kind in Enum.GetValues<LineKind>())
        {
            lines[EnumWords.Of(kind)] = [.. Sides(kind)];
            foreach (var line in Sides(kind))
            {
                lines[Of(line)] = [line];
            }
        }

        return lines;
    }
}
