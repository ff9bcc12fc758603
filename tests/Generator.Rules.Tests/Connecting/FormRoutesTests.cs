using Generator.Domain;
using Generator.Library;
using Generator.Library.Loading;
using Generator.Rules.Connecting;

namespace Generator.Rules.Tests.Connecting;

/// <summary>How far a technique is from where the hero is, and over which moves.</summary>
public sealed class FormRoutesTests
{
    private static readonly Book Whole = LibraryLoader.LoadBundled().Value!;

    private static readonly HeroForm Opening = HeroForm.FreeIn(Stance.LeftLead);

    [Theory]
    [InlineData("cross", true)]
    [InlineData("axe-kick", true)]
    [InlineData("wrist-taken", true)]
    [InlineData("gripper-swing", false)]
    [InlineData("one-leg-parry", false)]
    [InlineData("floor-heel-finish", false)]
    [InlineData("straddled", false)]
    public void What_works_from_standing_free_needs_no_way(string technique, bool near) => Assert.Equal(near, FormRoutes.AreNear(Whole, Flags(technique)));

    [Theory]
    [InlineData("gripper-swing", 0, FormRoutes.Never)]
    [InlineData("gripper-swing", 1, 2)]
    [InlineData("tackled-down", 0, FormRoutes.Never)]
    [InlineData("tackled-down", 1, 1)]
    [InlineData("one-leg-parry", 0, 2)]
    [InlineData("cross", 0, 1)]
    public void A_way_takes_no_more_setbacks_than_are_left(string technique, int setbacks, int moves) => Assert.Equal(moves, Routes(technique).From(Opening, setbacks));

    [Fact]
    public void The_first_move_of_a_way_leads_one_move_closer()
    {
        var routes = Routes("raised-leg-jam");
        var first = routes.FirstMoves(Opening, 0).Select(m => Whole.Techniques[m.Technique].BaseId).Distinct(StringComparer.Ordinal);
        Assert.Equal(["shin-check"], first);
        Assert.Equal(1, routes.From(HeroForm.FreeIn(Stance.OnLeftLeg), 0));
        Assert.Empty(routes.FirstMoves(HeroForm.FreeIn(Stance.OnLeftLeg), 0));
    }

    [Fact]
    public void A_way_keeps_to_what_is_possible()
    {
        bool[] without = [.. Whole.Techniques.Select(t => t.BaseId != "shin-check")];
        Assert.Equal(FormRoutes.Never, new FormRoutes(FormGraph.Of(Whole), Flags("raised-leg-jam"), without).From(Opening, FormRoutes.MostSetbacks));
    }

    [Fact]
    public void Whoever_lies_open_beside_a_floored_hero_is_within_reach_of_a_move()
    {
        var routes = Routes("floor-heel-chop");
        Assert.True(routes.WorksOn(HeroForm.FreeIn(Stance.FloorBack), Posture.OnBack, 0));
        Assert.False(routes.WorksOn(HeroForm.FreeIn(Stance.FloorBack), Posture.Folded, 0));
        Assert.False(routes.WorksOn(Opening, Posture.OnBack, 0));
    }

    [Fact]
    public void Every_technique_of_the_library_can_be_come_to()
    {
        var ids = Whole.Techniques.Select(t => t.BaseId).Distinct(StringComparer.Ordinal).ToList();
        Assert.Equal([], ids.Where(id => !FormRoutes.AreNear(Whole, Flags(id)) && Routes(id).From(Opening, FormRoutes.MostSetbacks) == FormRoutes.Never));
        Assert.True(ids.Count > 300);
    }

    [Fact]
    public void A_tackle_that_gets_through_holds_on_and_a_blow_does_not()
    {
        Assert.True(Whole.Technique("tackled-down").Seizes);
        Assert.True(Whole.Technique("wrist-taken-left").Seizes);
        Assert.False(Whole.Technique("knocked-down").Seizes);
        Assert.All(Whole.Techniques.Where(t => t.Seizes), t => Assert.Contains("keeps-grip", t.Reactions));
    }

    private static FormRoutes Routes(string technique) => new(FormGraph.Of(Whole), Flags(technique), [.. Whole.Techniques.Select(_ => true)]);

    private static bool[] Flags(string technique) => [.. Whole.Techniques.Select(t => t.BaseId == technique)];
}
