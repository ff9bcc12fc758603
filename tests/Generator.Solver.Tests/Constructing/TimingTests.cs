using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Shapes;
using Generator.Rules.Replaying;
using Xunit.Abstractions;

namespace Generator.Solver.Tests.Constructing;

/// <summary>A draft to music lands on its accents and stands still where it holds; one of the same brief without them mostly does not.</summary>
public sealed class TimingTests(ITestOutputHelper output)
{
    private static readonly Brief Asked = new()
    {
        Length = new Length(40, null, 4),
        Attackers = [new AttackerPart { Name = "Bruno", Skill = Skill.Stunt }, new AttackerPart { Name = "Wanda", Skill = Skill.Stunt }],
        Tempo = new Tempo(120),
        Music = new Music
        {
            Passages = [new(new(0), new(90), new(0)), new(new(30), new(120), new(8))],
            Accents = [.. new[] { 12, 13, 21, 34, 35, 47, 58, 66, 71 }.Select(a => new HalfCounts(a))],
            Holds = [new(new(28), 2m, null), new(new(54), null, 4)],
        },
    };

    [Fact]
    public void Contacts_land_on_accents_and_nobody_moves_through_a_hold()
    {
        var (landed, plain, through) = (0, 0, 0);
        for (var seed = 1; seed <= 2; seed++)
        {
            var with = Drafts.Rounds(Asked, seed, 3);
            Assert.NotNull(with.Routine);
            Assert.DoesNotContain(with.Verdict!.Findings, f => f.Severity >= Severity.Broken);
            landed += Landed(with.Routine);
            var without = Drafts.Rounds(Asked with { Music = Asked.Music! with { Accents = [], Holds = [] } }, seed, 3).Routine!;
            plain += Landed(without);
            through += Asked.Music!.Holds.Count(h => Steps(without).Any(s => s.Start < h.At.Value && h.At.Value < s.Over));
        }

        output.WriteLine($"{landed} of {2 * Asked.Music!.Accents.Count} accents, {plain} by chance; {through} of 4 holds were in the way by chance");
        Assert.True(landed >= 15 && landed >= plain + 4, $"{landed} accents, {plain} by chance");
    }

    private static IReadOnlyList<Step> Steps(Routine routine) => Replay.Of(new Scene(routine.Brief, Drafts.Book), routine);

    /// <summary>Accents on which something lands, seen from the steps.</summary>
    private static int Landed(Routine routine)
    {
        var shape = FightShape.Of(new Scene(routine.Brief, Drafts.Book), routine);
        return Asked.Music!.Accents.Count(a => shape.Contacts.Any(c => c.Time == a.Value));
    }
}
