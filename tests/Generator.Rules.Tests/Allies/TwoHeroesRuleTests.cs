using Generator.Domain;
using Generator.Rules.Judging;
using Generator.Rules.Tests.Fights;

namespace Generator.Rules.Tests.Allies;

/// <summary>What the rules say of a hero and an ally, each measured by hand.</summary>
public sealed class TwoHeroesRuleTests
{
    private const string Start = "left-lead Bruno@12/250 Wanda@6/400";

    private const string Blocks = "swing-right > outside-block-left {limb-stopped}";

    private const string Throws = "cross-right > wrist-catch-left {arm-caught} ; hip-throw-right {thrown-over}";

    private static readonly IReadOnlyList<Fight> All =
    [
        TwoHeroes.Of(Start, 150, Blocks + " ; cross-right {head-back}", "Wanda: " + Blocks + " ; cross-right {sits-down}"),
        TwoHeroes.Of(Start, 80, Blocks, "=1 Wanda: " + Blocks),
        TwoHeroes.Of(Start, 150, Blocks + " ; cross-right {head-back}", "=3 Bruno: cross-right {sits-down}"),
        TwoHeroes.Of(Start, 150, "=12 Wanda: !" + Blocks, "Wanda: " + Blocks + " ; cross-right {sits-down}"),
        TwoHeroes.Of("square Bruno@12/250 Wanda@6/400", 120, Throws, "=20 Wanda: " + Blocks),
        TwoHeroes.Of(Start, 150, Blocks, "Wanda: " + Blocks + " ; +20 cross-right {head-back}"),
    ];

    public static TheoryData<int> Numbers => [.. Enumerable.Range(0, All.Count)];

    private static Found Judge(string rule, Fight fight) => new([.. fight.Audit().Findings.Where(f => f.Rule == rule)]);

    [Fact]
    public void Two_who_each_have_their_own_attacker_are_clean() =>
        Assert.Equal([], TwoHeroes.Of(Start, 150, Blocks, "=1 Wanda: " + Blocks).Audit().Grave.Select(f => f.Message));

    [Theory]
    [InlineData(99, 1)]
    [InlineData(100, 0)]
    public void Back_to_back_they_keep_a_metre(int apart, int findings)
    {
        var found = Judge("spacing", TwoHeroes.Of(Start, apart, Blocks, "=1 Wanda: " + Blocks)).Finds(findings, 0);
        if (findings > 0)
        {
            found.As(Severity.Unsafe).Measures(apart / 100m, 1, "m").Concerns("Ines, Mira");
        }
    }

    /// <summary>Ines's cross on Bruno lasts from 2 to 4: at 3 he is still in it.</summary>
    [Theory]
    [InlineData(3, 1)]
    [InlineData(4, 0)]
    public void Nobody_is_in_a_move_of_both_at_once(int at, int findings)
    {
        var found = Judge("one-contact", TwoHeroes.Of(Start, 150, Blocks + " ; cross-right {head-back}", $"={at} Bruno: cross-right {{sits-down}}")).Finds(findings, 3);
        if (findings > 0)
        {
            found.As(Severity.Unsafe).Measures(0.5m, 0, "counts").Concerns("Bruno").Says("Bruno is in a move of Ines's until count 3, and in one of Mira's from count 2&.");
        }
    }

    /// <summary>Each has one contact at a time; two blows that land on two people at once are none of its matter.</summary>
    [Fact]
    public void Contacts_are_counted_on_each_of_the_two() =>
        Judge("one-contact", TwoHeroes.Of(Start, 150, Blocks, "Wanda: " + Blocks)).FindsNothing();

    /// <summary>
    /// Mira's cross ends at 4 and sits Wanda down: 3.3 s, 11 half counts, and 2 of margin, so that she is up at 17. She lands 1.27 m from Mira, 2.77 m from Ines: 1.87 m at 2 m/s are 4 half counts more.
    /// </summary>
    [Theory]
    [InlineData(18, 1)]
    [InlineData(19, 0)]
    public void A_reset_lasts_whoever_put_them_down(int start, int findings)
    {
        var fight = TwoHeroes.Of(Start, 150, $"={start} Wanda: !" + Blocks, "Wanda: " + Blocks + " ; cross-right {sits-down}");
        Judge("reset-window", fight).Finds(findings, 3);
    }

    /// <summary>The throw draws Bruno in to 44 cm and sends him 40 cm on past the mark, as <see cref="Rules.ClearLaneTests"/> has it: 84 cm out at 6, 36 cm short of Mira, who is in the lane and at his feet.</summary>
    [Fact]
    public void The_ally_is_a_body_in_the_lane()
    {
        var fight = TwoHeroes.Of("square Bruno@12/250 Wanda@6/400", 120, Throws, "=20 Wanda: " + Blocks);
        Judge("clear-lane", fight).Finds(1, 2).As(Severity.Unsafe).Measures(0.36m, 0.6m, "m").Concerns("Bruno, Mira");
        Judge("underfoot", fight).Finds(1, 2).As(Severity.Unsafe).Concerns("Bruno, Mira");
        Judge("clear-lane", TwoHeroes.Of("square Bruno@12/250 Wanda@6/500", 300, Throws, "=20 Wanda: " + Blocks)).FindsNothing();
    }

    /// <summary>And the hero in the ally's: what Mira does at 6 is what Ines does at 12.</summary>
    [Fact]
    public void The_hero_is_a_body_in_the_lane_of_the_ally() =>
        Judge("clear-lane", TwoHeroes.Of("square Bruno@12/400 Wanda@6/370", 120, "=20 " + Blocks, "Wanda: " + Throws)).Finds(1, 2).Measures(0.36m, 0.6m, "m").Concerns("Wanda, Ines");

    [Theory]
    [InlineData(120, 1)]
    [InlineData(300, 0)]
    public void Whoever_goes_down_needs_their_own_length_to_the_other(int apart, int findings)
    {
        Assert.Equal(findings, Judge("underfoot", TwoHeroes.Of($"left-lead Bruno@12/250 Wanda@6/{apart + 200}", apart, Down(FallClass.Back), "=1 Wanda: " + Blocks)).Count(1, "Ines, Mira"));
    }

    /// <summary>On a knee nobody is longer than they are broad.</summary>
    [Fact]
    public void Whoever_goes_down_to_a_knee_does_not() =>
        Judge("underfoot", TwoHeroes.Of(Start, 120, Down(FallClass.ToKnee), "=1 Wanda: " + Blocks)).FindsNothing();

    [Fact]
    public void An_attacker_who_opens_beside_the_ally_is_told() =>
        Judge("spacing", TwoHeroes.Of("left-lead Bruno@12/250 Wanda@6/200", 150, Blocks, "=1 Wanda: " + Blocks)).Finds(1, 0).Measures(0.5m, 1, "m").Concerns("Wanda, Mira");

    /// <summary>Six hits at the head in a run are too many, three by each.</summary>
    [Fact]
    public void Hits_at_the_head_are_counted_together()
    {
        const string Three = "{0} cross-right {{head-back}} ; +2 cross-right {{head-back}} ; +2 cross-right {{head-back}}";
        var fight = TwoHeroes.Of(Start, 150, string.Format(System.Globalization.CultureInfo.InvariantCulture, Three, "=0 Bruno:"), string.Format(System.Globalization.CultureInfo.InvariantCulture, Three, "=40 Bruno:"))
            .With(b => b with { Safety = b.Safety with { Runs = 1, HeadHitsPerDay = 5 } });
        Judge("exposure", fight).Finds(1, 6).As(Severity.Unsafe).Measures(6, 5, "head-height hits").Concerns("Bruno");
    }

    [Fact]
    public void Nothing_happens_only_where_neither_does_anything()
    {
        // Ines waits ten counts; Mira fills them.
        var fight = TwoHeroes.Of(Start, 150, Blocks + " ; +20 cross-right {head-back}", "=4 Wanda: " + Blocks + " ; +2 cross-right {head-back} ; +4 cross-right {head-back}");
        Assert.True(Judge("dead-air", TwoHeroes.Of(Start, 150, Blocks + " ; +20 cross-right {head-back}", "=1 Wanda: " + Blocks)).Count(3, "Bruno") > 0);
        Assert.DoesNotContain(fight.Audit().Findings, f => f.Rule == "dead-air" && f.Severity == Severity.Broken);
    }

    [Fact]
    public void Everybody_goes_for_the_nearer()
    {
        // Wanda stands nearer to Mira: that she could attack Ines sooner than Bruno does not count. Bruno, from 5 m, needs longer.
        Judge("nearest-first", TwoHeroes.Of("left-lead Bruno@12/500 Wanda@6/350", 150, "=6 " + Blocks, "=1 Wanda: " + Blocks)).FindsNothing();
        Judge("nearest-first", Fight.Of("left-lead Bruno@12/500 Wanda@6/250", "+6 " + Blocks)).Finds(1, 1);
    }

    /// <summary>Whoever is called hero and whoever ally: the same is found, of the same people, at the same moves.</summary>
    [Theory]
    [MemberData(nameof(Numbers))]
    public void Hero_and_ally_are_judged_alike(int number)
    {
        var fight = All[number];
        Assert.Equal(Told(fight), Told(TwoHeroes.Swapped(fight)));
        Assert.Equal(fight.Audit().Points, TwoHeroes.Swapped(fight).Audit().Points);
    }

    [Fact]
    public void An_attack_is_told_by_the_side_of_whom_it_comes_at() =>
        Assert.Contains(TwoHeroes.Of(Start, 150, Blocks, "=1 Wanda: swing-right > outside-block-right {limb-stopped}").Audit().Findings, f => f.Message.Contains("which comes at Mira's left", StringComparison.Ordinal));

    /// <summary>The same of fights at random, right or wrong, whose moves are dealt out to the two. Whoever stands on a mark to the centimetre, as in two of them, has no bearing from it.</summary>
    [Fact]
    public void Hero_and_ally_are_judged_alike_whatever_they_do()
    {
        var (rules, alike) = (new HashSet<string>(StringComparer.Ordinal), 0);
        foreach (var fight in Enumerable.Range(0, 30).Select(TwoHeroes.Random).Where(f => f.Steps().All(s => !s.HasTarget || s.Before.Attackers[s.Row.Attacker].Distance > 0)))
        {
            rules.UnionWith(fight.Audit().Findings.Select(f => f.Rule));
            Assert.Equal(OfMoves(fight), OfMoves(TwoHeroes.Swapped(fight)));
            alike++;
        }

        Assert.True(alike > 26 && rules.Count > 15, $"{alike}: {string.Join(' ', rules)}");

        // What is said of the whole fight is said of the hero.
        static IEnumerable<string> OfMoves(Fight fight) => Told(fight).Where(t => !t.Contains(" length ", StringComparison.Ordinal));
    }

    /// <summary>A setback in which the hero goes down so, after an attack that it answers.</summary>
    private static string Down(FallClass kind)
    {
        var technique = TheBook.Book.Techniques.First(t => t.HeroFall == kind && t.Family == Family.Setback && !t.HasNoTarget);
        return $"{TheBook.Book.Attacks.First(a => technique.Answers.Contains(a.Line)).Id} > {technique.Id} {{{technique.Reactions[0]}}}";
    }

    private static IEnumerable<string> Told(Fight fight) => fight.Audit().Findings
        .Select(f => $"{f.Move} {f.Count.ToCountText()} {f.Rule} {f.Severity} {f.Measured} {f.Allowed} {string.Join('+', f.Who.Split(", ").Order(StringComparer.Ordinal))}").Order(StringComparer.Ordinal);
}
