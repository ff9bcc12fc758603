using Generator.Domain;
using Generator.Paperwork.Html;
using Generator.Paperwork.Printing;
using Generator.Paperwork.Text;

namespace Generator.Paperwork.Tests.Printing;

/// <summary>Names that try the wall: long ones, and ones in letters that many machines cannot draw.</summary>
public sealed class PosterTests
{
    [Theory]
    [InlineData("Bo", "Bo")]
    [InlineData("Valentina", "Valentina")]
    [InlineData("Bartholomäus Freiherr von Donnersmarck", "Bartholo…")]
    [InlineData("Wanda-Marie von der Hohenwarte", "Wanda")]
    [InlineData("Ash the Elder", "Ash")]
    [InlineData("小林さくら", "小林さ…")]
    public void Beside_a_count_a_name_is_as_long_as_one_line_holds(string name, string call) => Assert.Equal(call, PosterView.CallOf(name));

    [Fact]
    public void The_cast_has_all_of_a_name_that_stands_shortened_beside_the_counts()
    {
        var view = new PosterView(Named("Bartholomäus Freiherr von Donnersmarck"));
        Assert.Contains(view.Cast, c => c.Name == "Bartholomäus Freiherr von Donnersmarck");
        Assert.DoesNotContain(view.Moves, m => m.Name.Contains("Donnersmarck", StringComparison.Ordinal));
        Assert.Contains(view.Moves, m => m.Name.StartsWith("Barth", StringComparison.Ordinal));
        Assert.InRange(view.CallWidth, 30, PosterView.WidestName);
        const string Said = "Long names stand shortened";
        Assert.Contains(Said, PosterPage.Of(view.Source, PosterSize.A3), StringComparison.Ordinal);
        Assert.DoesNotContain(Said, PosterPage.Of(Ferry.Source, PosterSize.A3), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Ž Анастасия Ǎ ệ", null)]
    [InlineData("小林さくら", "A1 (a name in Chinese, Japanese or Korean)")]
    [InlineData("محمد", "A1 (a name in Arabic letters)")]
    [InlineData("Նարե", "A1 (a name in other letters)")]
    public void A_name_that_may_print_as_boxes_is_told_with_its_sign(string name, string? told)
    {
        var source = Named(name);
        Assert.Equal(told is null ? null : $"Where boxes stand instead of a name, this machine has no font for its letters; go by the sign: {told}.", NameLetters.Note(source.Brief));
        if (told is not null)
        {
            Assert.All([PosterPage.Of(source, PosterSize.A3), RoutinePaper.Of(new RoutineView(source)), PartPaper.Of(new RoutineView(source), 0)], p => Assert.Contains(told, p, StringComparison.Ordinal));
        }
    }

    private static PaperSource Named(string name) => Ferry.With(b => b with { Attackers = [b.Attackers[0] with { Name = name }, .. b.Attackers.Skip(1)] });
}
