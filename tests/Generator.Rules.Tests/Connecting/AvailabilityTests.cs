using Generator.Domain;
using Generator.Library;
using Generator.Library.Loading;

namespace Generator.Rules.Tests.Connecting;

public sealed class AvailabilityTests
{
    private static readonly Book Book = LibraryLoader.LoadBundled().Value!;

    [Fact]
    public void Stunt_performers_on_mats_have_the_whole_library() => Assert.Empty(Of(Given()).Techniques.Concat(Of(Given()).Attacks).Concat(Of(Given()).Reactions));

    [Fact]
    public void A_hard_floor_takes_every_fall_and_says_why()
    {
        var left = Of(Given() with { Floor = new FloorPlan { Surface = Surface.Hard } });
        var falls = Book.Reactions.Where(r => r.Surface == SurfaceNeed.Mat).Select(r => r.Id);
        Assert.Equal(falls.Order(StringComparer.Ordinal), left.Reactions.Select(r => r.Id).Order(StringComparer.Ordinal));
        Assert.Contains(left.Techniques, t => t is { Id: "hip-throw", Reason: "Thrown over needs mats or a sprung floor with pads, the floor is hard" });
        Assert.Contains(left.Techniques, t => t.Id == "knocked-down");
        Assert.DoesNotContain(left.Techniques, t => t.Id == "cross");
    }

    [Fact]
    public void A_limit_that_only_one_attacker_has_takes_nothing_and_one_that_all_have_does()
    {
        AttackerPart Limited(string name) => new() { Name = name, Skill = Skill.Stunt, Limits = ["no-back-fall"] };
        Assert.Empty(Of(Given() with { Attackers = [Limited("Bruno"), new AttackerPart { Name = "Wanda", Skill = Skill.Stunt }] }).Reactions);
        var left = Of(Given() with { Attackers = [Limited("Bruno"), Limited("Wanda")] });
        Assert.Equal(Book.Reactions.Where(r => r is { Fall: FallClass.Back, Uses: null }).Select(r => r.Id), left.Reactions.Select(r => r.Id));
        Assert.Contains(left.Techniques, t => t.Id == "finishing-push-kick" && t.Reason.Contains("Bruno must not take (no-back-fall)", StringComparison.Ordinal));
    }

    [Fact]
    public void A_novice_hero_keeps_what_novices_can_do()
    {
        var left = Of(Given() with { Hero = new HeroPart { Name = "Ines", Skill = Skill.Novice } }).Techniques.Select(t => t.Id).ToHashSet(StringComparer.Ordinal);
        Assert.All(Book.Techniques.Where(t => t is { Travel: null, Uses: null, Prop: null, IsAgainstPropsAlone: false }), t => Assert.True(t.HeroSkill == Skill.Novice || left.Contains(t.BaseId), t.Id));
        Assert.DoesNotContain("outside-block", left);
    }

    [Fact]
    public void A_hurt_left_hand_leaves_the_right_sides()
    {
        var left = Of(Given() with { Hero = new HeroPart { Name = "Ines", Skill = Skill.Stunt, Limits = ["no-left-hand"] } }).Techniques.Select(t => t.Id).ToList();
        Assert.DoesNotContain("outside-block", left);
        Assert.Contains("wedge", left);
    }

    [Fact]
    public void No_tempo_takes_anything_away()
    {
        var usual = Of(Given());
        for (var tempo = Tempo.Slowest; tempo <= Tempo.Fastest; tempo += 10)
        {
            var left = Of(Given() with { Tempo = new Tempo(tempo) });
            Assert.Equal(usual.Techniques, left.Techniques);
            Assert.Equal(usual.Attacks, left.Attacks);
        }
    }

    private static Brief Given() => new() { Attackers = [new AttackerPart { Name = "Bruno", Skill = Skill.Stunt }] };

    private static Availability Of(Brief brief) => new(new Scene(brief, Book));
}
