using Generator.Domain;

namespace Generator.Outside.Tests;

/// <summary>Falls, getting up and coming back against measured times, over the whole bundled library.</summary>
public sealed class FallTests
{
    /// <summary>Unexpected fall from standing to pelvis contact, young adults: 0.715 s (quoted in Robinovitch et al. 2005).</summary>
    private const decimal Fall = 0.715m;

    /// <summary>Lying to standing at full effort, young men: 1.64 s (Orth et al., Int J Exerc Sci Conf Proc 11(8):10).</summary>
    private const decimal FastestGetUp = 1.64m;

    /// <summary>Floor to standing, healthy adults of 50 to 90: 4.1 s (Bohannon and Lusardi 2004).</summary>
    private const decimal CautiousGetUp = 4.1m;

    private static List<Reaction> Floored => [.. Outside.Book.Reactions.Where(r => r is { Posture: Posture.OnBack or Posture.FaceDown, ReadySeconds: not null })];

    private static bool IsRealFall(FallClass fall) => fall is not (FallClass.None or FallClass.ToKnee);

    [Fact(DisplayName = "Robinovitch et al. 2005 (0.715 s), Orth et al. (1.64 s): nobody who fell is ready again before fall and fastest get-up, 2.355 s")]
    public void Ready_after_a_fall()
    {
        var falls = Floored.Where(r => IsRealFall(r.Fall)).ToList();

        Assert.True(falls.Count >= 6);
        Assert.All(falls, r => Assert.True(r.ReadySeconds >= Fall + FastestGetUp, r.Id));
    }

    [Fact(DisplayName = "Orth et al. (Int J Exerc Sci Conf Proc 11(8):10): nobody who lies is ready before 1.64 s")]
    public void Ready_from_lying() => Assert.All(Floored, r => Assert.True(r.ReadySeconds >= FastestGetUp, r.Id));

    [Fact(DisplayName = "Bohannon and Lusardi 2004 (Physiother Theory Pract 20:233): novices get the cautious 4.1 s to get up, after a fall 0.7 s more")]
    public void Novices_get_the_cautious_time()
    {
        var novice = Floored.Where(r => r.NoviceReadySeconds is not null).ToList();

        Assert.True(novice.Count >= 4);
        Assert.All(novice, r => Assert.True(r.NoviceReadySeconds >= CautiousGetUp + (IsRealFall(r.Fall) ? 0.7m : 0m), r.Id));
    }

    [Theory(DisplayName = "Reset floor (computed): fall 0.715 s + get-up + 3 m of walking, 4.41 s at best (1.462 m/s) and 7.17 s cautiously (1.272 m/s)")]
    [InlineData(Skill.Stunt, 146, 4.41)]
    [InlineData(Skill.Novice, 127, 7.17)]
    public void Reset_window_of_a_three_metre_return(Skill skill, int speed, double floor)
    {
        var checkedFalls = 0;
        for (var tempo = 60; tempo <= 160; tempo += 10)
        {
            var scene = Outside.Scene(attacker: a => a with { Skill = skill, Speed = speed }, tempo: tempo);
            foreach (var fall in Floored.Where(r => IsRealFall(r.Fall) && r.Skill <= skill))
            {
                var window = scene.ReadyAfter(scene.Book.ReactionIndex(fall.Id), 0) + scene.WalkTime(0, 390);
                Assert.True(Outside.Seconds(window, tempo) >= floor, $"{fall.Id} at {tempo}");
                checkedFalls++;
            }
        }

        Assert.True(checkedFalls >= 11);
    }

    [Fact(DisplayName = "Free fall, g = 9.80665 m/s2: hips at 0.9 m take 0.428 s to the floor, so no fall of hero or attacker is quicker")]
    public void No_fall_is_quicker_than_free_fall()
    {
        var free = (decimal)Math.Sqrt(2 * 0.9 / 9.80665);
        Assert.InRange(free, 0.4275m, 0.4290m);

        var heroFalls = Outside.Book.Techniques.Where(t => IsRealFall(t.HeroFall)).ToList();
        Assert.NotEmpty(heroFalls);
        Assert.All(heroFalls, t => Assert.True(t.FewestSeconds >= free, t.Id));

        // What is left of an attacker's time when the fastest get-up is taken off is the fall.
        Assert.All(Floored.Where(r => IsRealFall(r.Fall)), r => Assert.True(r.ReadySeconds - FastestGetUp >= free, r.Id));
    }

    [Theory(DisplayName = "Orth et al. (1.64 s), Bohannon and Lusardi 2004 (4.1 s): the hero gets up from the back no faster, at the default tempo")]
    [InlineData(Skill.Stunt, 1.64)]
    [InlineData(Skill.Trained, 1.64)]
    [InlineData(Skill.Novice, 4.1)]
    public void The_hero_gets_up(Skill skill, double floor)
    {
        foreach (var standing in new[] { Stance.LeftLead, Stance.RightLead, Stance.Square })
        {
            Assert.True(Outside.Seconds(Outside.Book.Stances.Time(Stance.FloorBack, standing, skill)) >= floor);
        }
    }

    [Fact(DisplayName = "Orth et al. (1.64 s): the pause that gets the hero up has a fewest time, so no tempo rushes it")]
    public void Get_up_pause() => Assert.All(Outside.Techniques("get-up"), t => Assert.True(t.FewestSeconds >= FastestGetUp, t.Id));
}
