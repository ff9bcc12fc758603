namespace Generator.Paperwork.Following;

/// <summary>The half counts of one performer while they are being filled in; whatever is written later covers what was there.</summary>
internal sealed class Cells
{
    private readonly int from;
    private readonly Doing[] doings;
    private readonly int[] moves;
    private readonly Figure[] figures;

    public Cells(int from, int to, Doing first)
    {
        this.from = from;
        doings = [.. Enumerable.Repeat(first, to - from)];
        moves = new int[to - from];
        figures = new Figure[to - from];
    }

    public IReadOnlyList<Doing> Doings => doings;

    public IReadOnlyList<int> Moves => moves;

    public IReadOnlyList<Figure> Figures => figures;

    public Doing this[int time] => doings[time - from];

    /// <summary>Parts of the span outside the routine are left away.</summary>
    public void Fill(int start, int end, Doing doing, int move)
    {
        for (var time = Math.Max(start, from); time < Math.Min(end, from + doings.Length); time++)
        {
            doings[time - from] = doing;
            moves[time - from] = move;
        }
    }

    /// <summary>From a moment on, until the next pose.</summary>
    public void Pose(int start, Figure figure) => Pose(start, from + figures.Length, figure);

    /// <summary>Within a span only.</summary>
    public void Pose(int start, int end, Figure figure)
    {
        for (var i = Math.Max(0, start - from); i < Math.Min(figures.Length, end - from); i++)
        {
            figures[i] = figure;
        }
    }
}
