namespace Generator.Paperwork.Printing;

/// <summary>The paper on which the pack is printed.</summary>
public sealed record PageSize
{
    public static readonly PageSize A4 = new("a4", "A4");

    /// <summary>8.5 by 11 inches.</summary>
    public static readonly PageSize Letter = new("letter", "letter");

    private PageSize(string word, string css) => (Word, Css) = (word, css);

    public static IReadOnlyList<PageSize> All { get; } = [A4, Letter];

    /// <summary>What the user writes.</summary>
    public string Word { get; }

    /// <summary>What the style sheet calls it.</summary>
    public string Css { get; }

    public override string ToString() => Word;
}
