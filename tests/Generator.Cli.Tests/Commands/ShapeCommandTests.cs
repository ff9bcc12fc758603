using System.Xml.Linq;
using Newtonsoft.Json.Linq;

namespace Generator.Cli.Tests.Commands;

public class ShapeCommandTests
{
    [Fact]
    public void A_sheet_is_printed_whatever_the_fight_is_like()
    {
        using var rig = new Rig();
        foreach (var csv in new[] { Samples.CleanCsv, Samples.BrokenCsv })
        {
            var answer = rig.Run("shape", rig.File("r.csv", csv));
            Assert.Equal(ExitCode.Good, answer.Code);
            Assert.StartsWith("Shape: Untitled fight\n", answer.Out, StringComparison.Ordinal);
            Assert.Equal(csv == Samples.BrokenCsv, answer.Out.Contains("NOT TO BE PERFORMED LIKE THIS", StringComparison.Ordinal));
        }
    }

    [Fact]
    public void Json_comes_from_standard_input()
    {
        using var rig = new Rig { Input = Samples.CleanCsv };
        var shape = JObject.Parse(rig.Run("shape", "-", "--json").Out);
        Assert.Equal(
            ["counts", "seconds", "figures", "intensity", "contacts", "exchanges", "gaps", "flurries", "onTop", "setbacks", "outs", "manners", "combinations", "levels", "floorAreas", "wear"],
            shape.Properties().Select(p => p.Name));
        Assert.Equal(1, (int)shape["wear"]![1]!["attacks"]!);
    }

    [Fact]
    public void Sheet_and_picture_go_into_files()
    {
        using var rig = new Rig();
        var (sheet, picture) = (Path.Combine(rig.Folder, "s.txt"), Path.Combine(rig.Folder, "s.svg"));
        var answer = rig.Run("shape", rig.File("r.csv", Samples.CleanCsv), "--out", sheet, "--picture", picture);
        Assert.Equal((ExitCode.Good, string.Empty), (answer.Code, answer.Out));
        Assert.Contains("The picture is in", answer.Err, StringComparison.Ordinal);
        Assert.StartsWith("Shape: ", File.ReadAllText(sheet), StringComparison.Ordinal);
        Assert.Equal("svg", XDocument.Load(picture).Root!.Name.LocalName);
    }

    [Fact]
    public void Notes_are_filled_in_first()
    {
        using var stop = new CancellationTokenSource();
        using var rig = new Rig { Input = "Bruno: wide swing > low parry, knee\nWanda: collar grab > break free\n", Patience = TimeSpan.FromMinutes(20), Stop = stop.Token, Keep = (_, _) => stop.Cancel() };
        var answer = rig.Run("shape", "-");
        Assert.Equal(ExitCode.Good, answer.Code);
        Assert.Contains("against 2 attackers", answer.Out, StringComparison.Ordinal);
        Assert.Contains("is filled in first", answer.Err, StringComparison.Ordinal);
    }
}
