namespace Generator.Paperwork.Printing;

/// <summary>A sheet on which the poster is printed; on the larger one everything is larger by the same share.</summary>
/// <param name="FileName">Of the PDF.</param>
/// <param name="Name">As a print shop calls it.</param>
/// <param name="Css">What the style sheet calls it.</param>
/// <param name="Unit">Millimetres for each of the smallest sheet's.</param>
public sealed record PosterSize(string FileName, string Name, string Css, decimal Unit)
{
    private const decimal Double = 1.414m;

    private const decimal Tabloid = 1.02m;

    /// <summary>A3, on which letters are as high as they must be to be read from 2 m.</summary>
    public static readonly PosterSize A3 = new("wall-a3.pdf", "A3", "420mm 297mm", 1);

    private static readonly IReadOnlyList<PosterSize> Metric = [A3, new("wall-a2.pdf", "A2", "594mm 420mm", Double)];

    private static readonly IReadOnlyList<PosterSize> Inches = [new("wall-11x17.pdf", "11 by 17 inches", "17in 11in", Tabloid), new("wall-17x22.pdf", "17 by 22 inches", "22in 17in", Tabloid * 1.29m)];

    /// <summary>Sheets that lie beside those of the pack in the same country.</summary>
    public static IReadOnlyList<PosterSize> Of(PageSize pack) => pack == PageSize.Letter ? Inches : Metric;

    /// <summary>All names that a printed poster can have.</summary>
    public static IEnumerable<string> FileNames => Metric.Concat(Inches).Select(s => s.FileName);
}
