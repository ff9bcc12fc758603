using Generator.Figures.Painting;

namespace Generator.Paperwork.Html;

/// <summary>Where on a page an instant is drawn, and how much room it takes; 100 units a metre, feet at 0.</summary>
/// <param name="Id">Of the element.</param>
/// <param name="Left">Least x.</param>
/// <param name="Top">Least y, below 0.</param>
/// <param name="Width">Units.</param>
public sealed record FigureView(string Id, double Left, double Top, double Width)
{
    /// <summary>Least y shown, so that people are as tall in one picture as in the next.</summary>
    private const double Head = -206;

    /// <summary>Least y of a picture.</summary>
    public double Upper => Math.Min(Head, Top);

    /// <summary>Height of a picture.</summary>
    public double Height => Drawing.Floor + 3 - Upper;
}
