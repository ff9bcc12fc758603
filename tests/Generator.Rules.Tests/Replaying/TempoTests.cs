using Generator.Domain;
using Generator.Rules.Replaying;
using Generator.Rules.Tests.Fights;

namespace Generator.Rules.Tests.Replaying;

/// <summary>What every tempo makes of the library: everything lasts long enough, nothing a half count longer than it must.</summary>
public sealed class TempoTests
{
    public static TheoryData<int> Tempos => [.. Enumerable.Range(0, 17).Select(n => Tempo.Slowest + (10 * n))];

    [Theory]
    [MemberData(nameof(Tempos))]
    public void Everything_lasts_the_next_half_count_that_is_long_enough(int tempo)
    {
        var scene = At(tempo);
        var (half, seen) = (30m / tempo, 0);
        foreach (var (own, here, fewest) in TheBook.Book.Techniques.Zip(scene.Book.Techniques, (o, h) => (o.Length.Value, h.Length.Value, h.FewestSeconds))
            .Concat(TheBook.Book.Attacks.Zip(scene.Book.Attacks, (o, h) => (o.Length.Value, h.Length.Value, h.FewestSeconds))))
        {
            Assert.True(here >= own && here * half >= fewest);
            Assert.True(here == own || (here - 1) * half < fewest);
            seen++;
        }

        Assert.Equal(TheBook.Book.Techniques.Count + TheBook.Book.Attacks.Count, seen);
    }

    [Theory]
    [MemberData(nameof(Tempos))]
    public void Whatever_answers_an_attack_lasts_until_it_lands(int tempo)
    {
        var scene = At(tempo);
        Assert.All(scene.Book.Techniques.Where(t => !t.Answers.IsEmpty), t => Assert.True(t.Length >= scene.Settle.ContactAfter, t.Id));
    }

    [Theory]
    [MemberData(nameof(Tempos))]
    public void Feet_hands_and_turns_have_their_seconds(int tempo)
    {
        var scene = At(tempo);
        var (half, own) = (30m / tempo, TheBook.Book);
        Assert.True(scene.Settle.HandBack.Value * half >= own.Settle.HandBack.Value * 0.2m);
        Assert.True(scene.Settle.ContactAfter.Value * half >= own.Settle.ContactAfter.Value * 0.2m);
        Assert.True(scene.Settle.WalkRoundPerHalfHour.Value * half >= own.Settle.WalkRoundPerHalfHour.Value * 0.2m);
        for (var gap = 0; gap < 20; gap++)
        {
            Assert.True(scene.Settle.TurnFor(gap) * 15 <= Math.Max(30, gap * half * 200));
            Assert.True(scene.Settle.TurnFor(gap) <= own.Settle.TurnFor(gap));
        }

        Assert.Equal(12, scene.Settle.TurnFor(20));
        foreach (var (from, to) in Enum.GetValues<Stance>().SelectMany(f => Enum.GetValues<Stance>().Select(t => (f, t))))
        {
            var time = own.Stances.Time(from, to, Skill.Trained);
            Assert.True(time == StanceTable.Never || scene.Book.Stances.Time(from, to, Skill.Trained) * half >= time * 0.2m);
        }
    }

    /// <summary>At 100 counts a minute and below everything has its own counts, whatever was made longer before.</summary>
    [Fact]
    public void A_slower_tempo_has_the_own_counts_again()
    {
        var slow = new Scene(At(200).Brief with { Tempo = new Tempo(100) }, At(200).Book);
        Assert.Equal(TheBook.Book.Techniques.Select(t => t.Length), slow.Book.Techniques.Select(t => t.Length));
        Assert.Equal(TheBook.Book.Settle.TurnByGap, slow.Settle.TurnByGap);
        Assert.Same(At(140).Book, At(140).Book);
    }

    [Fact]
    public void A_step_ends_when_the_technique_does_at_that_tempo()
    {
        var slip = Assert.Single(Fight.Of("left-lead Bruno@12/250 tempo=150", "cross-right > slip-left {falls-short}").Steps());
        Assert.Equal((2, 2), (slip.End - slip.Start, slip.Contact - slip.Start));
        var late = Assert.Single(Fight.Of("left-lead Bruno@12/250 tempo=160", "cross-right > slip-left {falls-short}").Steps());
        Assert.Equal((3, 3), (late.End - late.Start, late.Contact - late.Start));
    }

    private static Scene At(int tempo) => new(new Brief { Tempo = new Tempo(tempo), Attackers = [new AttackerPart { Name = "Bruno" }] }, TheBook.Book);
}
