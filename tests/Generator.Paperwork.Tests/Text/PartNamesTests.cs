using Generator.Domain;
using Generator.Paperwork.Text;

namespace Generator.Paperwork.Tests.Text;

public class PartNamesTests
{
    [Theory]
    [InlineData("Bruno", "bruno")]
    [InlineData("../../etc/passwd", "etc-passwd")]
    [InlineData("C:\\con.\0\n<b>|*?\"", "c-con-b")]
    [InlineData("Zoé Łukasz-Ñ", "zoé-łukasz-ñ")]
    [InlineData("   ", "performer")]
    [InlineData("💥", "performer")]
    [InlineData("a\u202Etxt.exe", "atxt-exe")]
    public void Only_letters_digits_and_hyphens_come_into_file_names(string name, string file) =>
        Assert.Equal(file, PartNames.Of(Fights.Ferry with { Attackers = [], Hero = new HeroPart { Name = name } })[0]);

    [Fact]
    public void Long_names_are_cut_and_names_alike_are_numbered()
    {
        var brief = Fights.Ferry with { Hero = new HeroPart { Name = new string('x', 300) }, Attackers = [new AttackerPart { Name = "Bo" }, new AttackerPart { Name = "BO!" }, new AttackerPart { Name = "bo 2" }] };
        Assert.Equal([new string('x', 40) + "", "bo", "bo-2", "bo-2-2"], PartNames.Of(brief));
    }
}
