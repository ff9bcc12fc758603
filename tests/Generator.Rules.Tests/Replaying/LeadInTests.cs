using Generator.Domain;
using Generator.Library;
using Generator.Rules.Judging;
using Generator.Rules.Replaying;
using Generator.Testing;

namespace Generator.Rules.Tests.Replaying;

/// <summary>Who must walk in for the first blow sets off before count 1, but no sooner than the setting allows.</summary>
public class LeadInTests
{
    [Theory]
    [InlineData(0)]
    [InlineData(3)]
    [InlineData(8)]
    public void Nobody_sets_off_sooner_than_the_setting_says(int most)
    {
        var (full, part) = (0, 0);
        for (var distance = 90; distance <= 2000; distance += 35)
        {
            var (scene, routine) = First(most, distance);
            var open = Replay.Open(scene, routine).Attackers[0];
            var walk = scene.WalkTime(0, distance);
            var needed = Math.Max(0, walk - scene.Settle.ContactAfter.Value);
            Assert.Equal(-Math.Min(needed, most), open.ReadyAt);

            // What it leaves too little time for is unsafe, and by just as much as is wanting.
            var early = Audit.Of(scene, routine).Findings.Where(f => f.Rule == "reset-window").ToList();
            Assert.Equal(needed > most, early.Count == 1);
            Assert.All(early, f => Assert.Equal(((needed - most) / 2m, Severity.Unsafe), (f.Allowed!.Value - f.Measured!.Value, f.Severity)));
            Assert.All(early.Where(_ => most > 0), f => Assert.Contains("Nobody sets off before the count-in", f.Advice, StringComparison.Ordinal));
            full += needed > most ? 1 : 0;
            part += needed > 0 && needed <= most ? 1 : 0;
        }

        Assert.True(full > 3 && (most == 0 || part > 3), $"{full} beyond it, {part} within");
    }

    /// <summary>One attacker at a distance, whose blow lands as soon as a first move can.</summary>
    private static (Scene Scene, Routine Routine) First(int most, int distance)
    {
        var tiny = TinyBook.Book;
        var book = new Book("tiny", tiny.Stances, tiny.Settle with { LeadInMost = new HalfCounts(most) }, tiny.Techniques.DistinctBy(t => t.BaseId), tiny.Attacks.DistinctBy(a => a.BaseId), tiny.Reactions);
        var brief = new Brief { Floor = new FloorPlan { Width = new Centimetres(5000), Depth = new Centimetres(5000), MarkX = new Centimetres(2500), MarkY = new Centimetres(2500) }, Attackers = [new AttackerPart { Name = "Ash" }] };
        var attack = tiny.Attacks[0];
        var answer = tiny.Techniques.First(t => t.Reactions.Count > 0);
        return (new Scene(brief, book), new Routine
        {
            Brief = brief,
            Placements = [new Placement(default, new Centimetres(distance), HalfCounts.Zero)],
            Moves = [new Move { Start = HalfCounts.Zero, Attacker = 0, Attack = attack.Id, Technique = answer.Id, Reaction = answer.Reactions[0] }],
        });
    }
}
