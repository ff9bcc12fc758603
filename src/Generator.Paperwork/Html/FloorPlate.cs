using Generator.Paperwork.Floor;
using Generator.Paperwork.Following;
using Generator.Paperwork.Text;

namespace Generator.Paperwork.Html;

/// <summary>A floor plan by itself, as markup for a page that has its own styles: who stands where, goes where and lands where.</summary>
/// <param name="Svg">The picture.</param>
/// <param name="Mark">The hero's mark on it.</param>
/// <param name="Scale">Units of it for a centimetre.</param>
/// <param name="Width">Its width.</param>
/// <param name="Height">Its height.</param>
public sealed record FloorPlate(string Svg, Point Mark, double Scale, double Width, double Height)
{
    /// <summary>Who is where on it when the move begins.</summary>
    public IReadOnlyList<(int Performer, Point At)> People { get; private init; } = [];

    /// <summary>The plan of one move; of the opening places when there is no such move.</summary>
    /// <param name="source">The routine; it may be empty.</param>
    /// <param name="move">Number from 0.</param>
    /// <param name="whole">All of the floor; else the part on which people are.</param>
    public static FloorPlate Of(PaperSource source, int move, bool whole = false)
    {
        var course = Course.Of(source);
        var painter = whole ? FloorPainter.OfAll(source, course) : new FloorPainter(source, course);
        var isMove = move >= 0 && move < source.Steps.Count;
        var picture = isMove ? painter.Of([source.Steps[move]]) : painter.Opening();
        var words = isMove ? $"Floor plan of move {Words.Number(move + 1)}" : "Floor plan of where everybody opens";
        return new FloorPlate(HtmlPage.Body<FloorSvg>(new Dictionary<string, object?>(StringComparer.Ordinal) { ["Picture"] = picture, ["InWords"] = words }), painter.Window.Mark, painter.Window.Scale, picture.Width, picture.Height)
        {
            People = [.. picture.Markers.Where(m => m.Style != "end").Select(m => (m.Performer, m.At))],
        };
    }

    /// <summary>The patterns that plans are filled with, once a page.</summary>
    public static string Patterns => HtmlPage.Body<Patterns>(new Dictionary<string, object?>(StringComparer.Ordinal));

    /// <summary>The styles of the printed pages.</summary>
    public static string Style => HtmlPage.Style;
}
