using Generator.Domain;

namespace Generator.Library.Marking;

/// <summary>How far it is from one mark to the next: so far that a good part of the library's travel moves that the hero makes by will, over no thing, lead there.</summary>
internal sealed class Legs
{
    /// <summary>Without a single such move in the library: ways of one to four metres. Common practice, no source.</summary>
    private static readonly (int Least, int Most)[] Usual = [(100, 400)];

    private readonly (int Least, int Most)[] moves;
    private readonly int best;

    public Legs(Book book)
    {
        moves = [.. book.Techniques.Where(t => t.Travel is { How: TravelKind.ByWill } && t.Uses is null).DistinctBy(t => t.BaseId).Select(t => (t.Travel!.Least.Value, t.Travel.Most.Value))];
        moves = moves.Length == 0 ? Usual : moves;
        best = moves.Max(m => Fitting(m.Least));
        int[] good = [.. moves.SelectMany(m => (int[])[m.Least, m.Most]).Where(w => IsGood(w))];
        (Least, Most) = (Math.Max(MarkRule.Apart, good.Min()), good.Max());
    }

    /// <summary>The shortest, in centimetres.</summary>
    public int Least { get; }

    /// <summary>The longest, in centimetres.</summary>
    public int Most { get; }

    /// <summary>A third of the moves that most ways have, or more, lead so far.</summary>
    public bool IsGood(double way) => 3 * Fitting(way) >= best;

    /// <summary>Of the moves that most ways have those that lead so far, 0 to 1.</summary>
    public double Share(double way) => Fitting(way) / (double)best;

    private int Fitting(double way) => moves.Count(m => m.Least <= way && way <= m.Most);
}
