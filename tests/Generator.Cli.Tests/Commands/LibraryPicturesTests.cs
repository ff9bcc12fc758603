using System.Xml.Linq;

namespace Generator.Cli.Tests.Commands;

public class LibraryPicturesTests
{
    [Theory]
    [InlineData("left hook")]
    [InlineData("hip-throw-right")]
    [InlineData("bear-hug-rear")]
    [InlineData("back-fall")]
    public void A_record_is_drawn_with_its_caution(string name)
    {
        using var rig = new Rig();
        var path = Path.Combine(rig.Folder, "picture.svg");
        Assert.Equal(ExitCode.Good, rig.Run("library", "show", name, "--picture", path).Code);
        var root = XDocument.Parse(File.ReadAllText(path)).Root!;
        Assert.Equal("svg", root.Name.LocalName);
        Assert.Contains(root.Elements(), e => e.Value == "Blocking picture, not how it is taught.");
        Assert.True(root.Descendants().Count(e => e.Name.LocalName == "path") > 60);
    }

    [Fact]
    public void What_is_no_picture_is_refused()
    {
        using var rig = new Rig();
        var answer = rig.Run("library", "show", "left hook", "--picture", Path.Combine(rig.Folder, "picture.gif"));
        Assert.Equal(ExitCode.Input, answer.Code);
        Assert.Contains("Maybe end the name in .svg or .png", answer.Err, StringComparison.Ordinal);
    }

    [Fact]
    public void A_browser_draws_dots_as_large_as_the_drawing_and_without_one_it_is_said()
    {
        using var rig = new Rig();
        var (dots, drawing) = (Path.Combine(rig.Folder, "picture.png"), Path.Combine(rig.Folder, "picture.svg"));
        Assert.Equal(ExitCode.Good, rig.Run("library", "show", "left hook", "--picture", dots).Code);
        Assert.Equal(ExitCode.Good, rig.Run("library", "show", "left hook", "--picture", drawing).Code);
        var text = File.ReadAllText(dots);
        var size = XDocument.Parse(File.ReadAllText(drawing)).Root!;
        Assert.StartsWith($"{Math.Ceiling((double)size.Attribute("width")!)} {Math.Ceiling((double)size.Attribute("height")!)} <!DOCTYPE html>", text, StringComparison.Ordinal);
        Assert.Contains(File.ReadAllText(drawing).Trim(), text, StringComparison.Ordinal);

        using var bare = new Rig { Camera = () => null };
        var answer = bare.Run("library", "show", "left hook", "--picture", Path.Combine(bare.Folder, "picture.png"));
        Assert.Equal(ExitCode.Input, answer.Code);
        Assert.Contains("Maybe install Chromium, or end the name in .svg", answer.Err, StringComparison.Ordinal);
    }

    [Fact]
    public void All_are_drawn_on_one_page()
    {
        using var rig = new Rig();
        var path = Path.Combine(rig.Folder, "pictures.html");
        Assert.Equal(ExitCode.Good, rig.Run("library", "pictures", path).Code);
        var page = File.ReadAllText(path);
        Assert.Equal(465 + 78 + 98, page.Split("<figure>").Length - 1);
        Assert.Contains("<figcaption>Hook left</figcaption>", page, StringComparison.Ordinal);
    }
}
