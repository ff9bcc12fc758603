using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Replaying;
using Thing = Generator.Rules.Rules.Thing;

namespace Generator.Solver.Tests.Constructing;

/// <summary>A draft on a floor with things uses some of them, each where it stands; on a floor without it uses none.</summary>
public sealed class ThingDraftTests
{
    private static readonly Obstacle[] Things =
    [
        new("back wall", new(50), new(560), new(700), new(20)) { Kind = "wall" },
        new("long table", new(600), new(200), new(90), new(200)) { Kind = "table", Rated = true, Padded = true },
        new("rail", new(300), new(220), new(200), new(10)) { Kind = "rail" },
    ];

    [Fact]
    public void Things_are_used_where_they_stand()
    {
        var used = Enumerable.Range(1, 6).SelectMany(seed => Uses(Canteen(Things), seed)).ToList();
        Assert.All(used, u => Assert.True(u.Thing is not null, u.Name));
        Assert.True(used.Count >= 1, $"{used.Count} uses in six drafts");
    }

    [Fact]
    public void A_thing_of_no_kind_is_only_in_the_way() =>
        Assert.Empty(Uses(Canteen([.. Things.Select(t => t with { Kind = null })]), 1));

    private static IEnumerable<(ThingNeed Need, string Name, Obstacle? Thing)> Uses(Brief brief, int seed)
    {
        var routine = Drafts.Rounds(brief, seed).Routine;
        Assert.NotNull(routine);
        var scene = new Scene(routine.Brief, Drafts.Book);
        return [.. Replay.Of(scene, routine).SelectMany(s => Thing.Of(scene, s))];
    }

    private static Brief Canteen(IReadOnlyList<Obstacle> things) => new()
    {
        Length = new Length(32, null, 4),
        Floor = new FloorPlan { Width = new(800), Depth = new(700), MarkX = new(400), MarkY = new(320), Obstacles = things },
        Hero = new HeroPart { Name = "Ines", Skill = Skill.Stunt },
        Attackers = [new AttackerPart { Name = "Bruno", Skill = Skill.Stunt, Bearing = new(0), Distance = new(190) }, new AttackerPart { Name = "Wanda", Bearing = new(6), Distance = new(150) }],
    };
}
