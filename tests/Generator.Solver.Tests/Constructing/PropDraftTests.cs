using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Judging;
using Generator.Rules.Replaying;
using Prop = Generator.Rules.Rules.Prop;

namespace Generator.Solver.Tests.Constructing;

/// <summary>A draft of a brief with props uses them, each where it is, and passes the audit; a draft without has none.</summary>
public sealed class PropDraftTests
{
    [Fact]
    public void Whoever_comes_with_a_stick_uses_it()
    {
        var brief = Alley([new PropPart("club", "stick") { With = 0 }, new PropPart("umbrella", "umbrella") { With = -1 }]);
        var used = 0;
        foreach (var seed in new[] { 1, 2 })
        {
            var routine = Drafts.Rounds(brief, seed).Routine;
            Assert.NotNull(routine);
            var scene = new Scene(routine.Brief, Drafts.Book);
            Assert.DoesNotContain(Audit.Of(scene, routine).Findings, f => f.Severity >= Severity.Broken);
            used += Replay.Of(scene, routine).SelectMany(s => Prop.Used(scene, s)).Count();
        }

        Assert.True(used >= 2, $"{used} uses in two drafts");
    }

    [Fact]
    public void Without_props_nothing_is_done_with_one()
    {
        var routine = Drafts.Rounds(Alley([]), 1).Routine;
        Assert.NotNull(routine);
        Assert.DoesNotContain(routine.Moves, m => m.Technique?.StartsWith("prop-", StringComparison.Ordinal) == true || m.Attack?.StartsWith("prop-", StringComparison.Ordinal) == true);
    }

    private static Brief Alley(IReadOnlyList<PropPart> props) => new()
    {
        Length = new Length(32, null, 4),
        Hero = new HeroPart { Name = "Ines", Skill = Skill.Stunt },
        Attackers = [new AttackerPart { Name = "Bruno", Skill = Skill.Stunt }, new AttackerPart { Name = "Wanda" }],
        Props = props,
    };
}
