using Generator.Domain;
using Generator.Paperwork.Html;

namespace Generator.Paperwork.Tests.Html;

public class PartNamesTests
{
    [Theory]
    [InlineData("Bruno", "part-bruno.html")]
    [InlineData("../../etc/passwd", "part-etc-passwd.html")]
    [InlineData("C:\\con.\0\n<b>|*?\"", "part-c-con-b.html")]
    [InlineData("Zoé Łukasz-Ñ", "part-zoé-łukasz-ñ.html")]
    [InlineData("   ", "part-performer.html")]
    [InlineData("💥", "part-performer.html")]
    [InlineData("a\u202Etxt.exe", "part-atxt-exe.html")]
    public void Only_letters_digits_and_hyphens_come_into_file_names(string name, string file) =>
        Assert.Equal(file, PartNames.Of(Fights.Ferry with { Attackers = [], Hero = new HeroPart { Name = name } })[0]);

    [Fact]
    public void Long_names_are_cut_and_names_alike_are_numbered()
    {
        var brief = Fights.Ferry with { Hero = new HeroPart { Name = new string('x', 300) }, Attackers = [new AttackerPart { Name = "Bo" }, new AttackerPart { Name = "BO!" }, new AttackerPart { Name = "bo 2" }] };
        Assert.Equal(["part-" + new string('x', 40) + ".html", "part-bo.html", "part-bo-2.html", "part-bo-2-2.html"], PartNames.Of(brief));
    }
}
