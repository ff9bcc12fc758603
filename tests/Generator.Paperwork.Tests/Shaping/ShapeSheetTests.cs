using System.Xml.Linq;
using Generator.Domain;
using Generator.Paperwork.Shaping;
using Generator.Paperwork.Text;
using Generator.Rules;
using Generator.Rules.Shapes;
using Generator.Testing;
using Newtonsoft.Json.Linq;

namespace Generator.Paperwork.Tests.Shaping;

public class ShapeSheetTests
{
    private static readonly XNamespace Drawing = "http://www.w3.org/2000/svg";

    [Fact]
    public void The_ferry_fight_as_text() => Golden.Matches("shape", Ferry.Source.Head.Above(ShapeSheet.Of(Ferry.Source.Shape)));

    [Fact]
    public void The_ferry_fight_as_json() => Golden.Matches("shape-json", ShapeJson.Of(Ferry.Source.Shape));

    /// <summary>Random routines, most of them wrong, and the empty one: no line too wide, every number in JSON that stands on the sheet, the picture well formed with everybody's name and everything within it.</summary>
    [Fact]
    public void Any_routine_has_a_sheet_json_and_a_picture()
    {
        var (drawn, warned) = (0, 0);
        foreach (var routine in Enumerable.Range(1, 15).Select(seed => RandomRoutine.Of(seed, Ferry.Book)).Append(Ferry.Routine with { Moves = [] }))
        {
            var source = PaperSource.Of(new Scene(routine.Brief, Ferry.Book), routine);
            Assert.All(ShapeSheet.Of(source.Shape).Split('\n'), l => Assert.InRange(Page.LengthOf(l), 0, Page.Width));
            var json = JObject.Parse(ShapeJson.Of(source.Shape));
            Assert.Equal(Rules.Shapes.Figures.Of(source.Shape).Select(f => f.Id), json["figures"]!.Select(f => (string)f["id"]!));
            Assert.Equal(routine.Brief.Attackers.Count + 1, json["wear"]!.Count());
            var picture = XDocument.Parse(ShapePicture.Of(source.Shape, source.Head));
            var words = string.Join(' ', picture.Descendants(Drawing + "text").Select(t => t.Value));
            Assert.Contains(source.Head.Version, words, StringComparison.Ordinal);
            Assert.Contains("A draft is a proposal, not clearance.", words, StringComparison.Ordinal);
            Assert.Equal(source.Head.Warning is not null, words.Contains(PaperHead.Forbidden, StringComparison.Ordinal));
            var (width, height) = ((double)picture.Root!.Attribute("width")!, (double)picture.Root.Attribute("height")!);
            foreach (var box in picture.Descendants(Drawing + "rect").Where(r => r.Attribute("x") is not null))
            {
                Assert.InRange((double)box.Attribute("x")! + (double)box.Attribute("width")!, 0, width);
                Assert.InRange((double)box.Attribute("y")! + (double)box.Attribute("height")!, 0, height);
                drawn++;
            }

            warned += source.Head.Warning is null ? 0 : 1;
        }

        Assert.InRange(drawn, 200, int.MaxValue);
        Assert.InRange(warned, 8, 16);
    }

    [Fact]
    public void Every_lane_bears_its_name()
    {
        var words = XDocument.Parse(ShapePicture.Of(Ferry.Source.Shape, Ferry.Source.Head)).Descendants(Drawing + "text").Select(t => t.Value).ToList();
        Assert.All(Ferry.Routine.Brief.Attackers.Select(a => a.Name).Append(Ferry.Routine.Brief.Hero.Name), n => Assert.Contains(n, words));
        Assert.Equal(3, words.Count(w => w is "✕" or "→"));
    }

    [Theory]
    [InlineData(5, "half counts", "2.5 counts", "at least 2")]
    [InlineData(2, "half counts", "1 count", "at least 2")]
    [InlineData(1, "moves", "1 move", "at least 4")]
    [InlineData(null, "moves", "nothing to judge", "at least 4")]
    public void Half_counts_are_told_as_counts(int? value, string unit, string told, string band)
    {
        var figure = new Figure("rhythm", "x", "x", unit, value, 4, null, string.Empty);
        Assert.Equal((told, band), (FigureWords.Value(figure), FigureWords.Band(figure)));
    }
}
