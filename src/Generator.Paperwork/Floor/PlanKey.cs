namespace Generator.Paperwork.Floor;

/// <summary>How things, ways in, marks and props are called on a plan: by name, or, where a small plan has many of them, by letters that are explained beside it.</summary>
/// <param name="names">All of them, obstacles first, as on the wall sheet.</param>
/// <param name="isSmall">The plan is small.</param>
internal sealed class PlanKey(IReadOnlyList<string> names, bool isSmall)
{
    /// <summary>Names for which there is room on a small plan.</summary>
    private const int Room = 6;

    private const int Letters = 26;

    private readonly bool inLetters = isSmall && names.Count > Room;

    /// <summary>What is written beside one of them, a name no wider than that.</summary>
    public string Of(int index, double widest) => inLetters ? Letter(index) : TextSize.Fit(names[index], FloorPainter.Size, widest);

    /// <summary>"a: kitchen table", …; nothing where names are written.</summary>
    public IReadOnlyList<string> Explained => inLetters ? [.. names.Select((name, i) => $"{Letter(i)}: {name}")] : [];

    /// <summary>a to z, then aa, bb …</summary>
    private static string Letter(int index) => new((char)('a' + (index % Letters)), 1 + (index / Letters));
}
