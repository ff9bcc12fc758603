using Generator.Domain;
using Generator.Library;
using Generator.Rules.Judging;
using Generator.Rules.Rules;

namespace Generator.Outside.Tests;

/// <summary>Reaction, sight and effort against published figures, through the rules that use them.</summary>
public sealed class PerceptionTests
{
    private static IReadOnlyList<Finding> Findings(string rule, Brief brief, IEnumerable<Move> moves, string clock = "12", Book? book = null)
    {
        Assert.True(Bearing.TryParse(clock, out var bearing));
        var routine = new Routine { Brief = brief, Placements = [new Placement(bearing, new Centimetres(250), HalfCounts.Zero)], Moves = [.. moves] };
        return [.. Audit.Of(new Generator.Rules.Scene(brief, book ?? Outside.Book), routine).Findings.Where(f => string.Equals(f.Rule, rule, StringComparison.Ordinal))];
    }

    private static Move FromBehind(string attack, Cue cue) =>
        new() { Start = HalfCounts.Zero, Attacker = 0, Attack = attack, Cue = cue, Technique = "turning-block-left", Reaction = "limb-stopped" };

    [Fact(DisplayName = "Robinovitch et al. 2005 (J Gerontol A 60:1553): hands come up in 0.53 s, longer than the 0.231 s of seeing alone (Woods et al. 2015, Front Hum Neurosci 9:131)")]
    public void The_reaction_time_is_movement_and_not_only_seeing()
    {
        Assert.Equal(0.53m, Outside.Book.Settle.ReactionSeconds);
        Assert.True(Outside.Book.Settle.ReactionSeconds > 0.231m);
    }

    [Theory(DisplayName = "Robinovitch et al. 2005: a blow from behind that lands sooner than 0.53 s after its cue is unsafe")]
    [InlineData(113, false)]
    [InlineData(114, true)]
    [InlineData(126, true)]
    [InlineData(100, false)]
    public void A_cue_needs_a_reaction_time(int tempo, bool unsafely)
    {
        // A jab that may be done in 0.4 s lasts a count, 60 / tempo: 0.531 s at 113, 0.526 s at 114.
        var quick = new Book(Outside.Book.Version, Outside.Book.Stances, Outside.Book.Settle, Outside.Book.Techniques.DistinctBy(t => t.BaseId),
            Outside.Book.Attacks.DistinctBy(a => a.BaseId).Select(a => a.BaseId == "jab" ? a with { FewestSeconds = 0.4m } : a), Outside.Book.Reactions);
        var findings = Findings("blind-side", Outside.Brief(tempo: tempo), [FromBehind("jab-right", Cue.Voice)], "6", quick);

        Assert.Equal(unsafely, findings.Count == 1);
    }

    [Fact(DisplayName = "Robinovitch et al. 2005: at every tempo every attack that comes from behind leaves a reaction time")]
    public void Attacks_from_behind_leave_time()
    {
        for (var counts = Tempo.Slowest; counts <= Tempo.Fastest; counts += 10)
        {
            var tempo = new Tempo(counts);
            var behind = Outside.Book.At(tempo).Attacks.Where(a => a.From.Contains(new Turn(12))).ToList();

            Assert.True(behind.Count >= 10);
            Assert.All(behind, a => Assert.True(tempo.SecondsIn(a.Length) >= 0.53m, $"{a.Id} at {counts}"));
        }
    }

    [Fact(DisplayName = "Sight cone (computed; ANSUR II head breadth 154 mm, 6 in gap): a fist covers the head's middle up to 17.8 degrees off the line, so one half hour reads and two do not")]
    public void A_straight_miss_reads_along_the_line()
    {
        // Fist 0.152 m short of the face, head centre 0.100 m behind it, half breadth 0.077 m, half a fist 0.044 m.
        var covers = Math.Asin(0.077 / (0.152 + 0.100)) * 180 / Math.PI;
        var touches = Math.Asin((0.077 + 0.044) / (0.152 + 0.100)) * 180 / Math.PI;
        Assert.InRange(covers, 17.7, 17.9);
        Assert.InRange(touches, 28.5, 28.8);

        for (var off = 0; off <= 6; off++)
        {
            Assert.Equal(off * 15 <= covers, Sightline.Reads(Sells.Along, off));
            Assert.True(off * 15 <= touches || !Sightline.Reads(Sells.Along, off));
        }
    }

    [Fact(DisplayName = "Sight cone (computed): a bigger gap narrows the cone, 17.8, 14.7 and 11.0 degrees at 6, 8 and 12 in")]
    public void A_bigger_gap_narrows_the_cone()
    {
        double[] cones = [.. new[] { 0.152, 0.203, 0.305 }.Select(gap => Math.Asin(0.077 / (gap + 0.100)) * 180 / Math.PI)];

        Assert.InRange(cones[1], 14.6, 14.8);
        Assert.InRange(cones[2], 10.9, 11.1);

        // The rule's half hour of 15 degrees therefore holds for the 6 in of the library's bands and not for gaps of 8 in and more.
        Assert.True(cones[0] > Sightline.AlongWithin * 15 && cones[1] < Sightline.AlongWithin * 15);
    }

    [Fact(DisplayName = "Plane geometry: left and right, in front and behind are alike to a lens, and square on no straight miss reads")]
    public void Mirror_images_agree()
    {
        for (var camera = 0; camera < Bearing.Circle; camera++)
        {
            for (var target = 0; target < Bearing.Circle; target++)
            {
                var off = Sightline.OffLine(new Bearing(camera), target);
                Assert.Equal(off, Sightline.OffLine(new Bearing(-camera), new Bearing(-target).HalfHours));
                Assert.Equal(off, Sightline.OffLine(new Bearing(camera + 12), target));
                Assert.Equal(off == 6, new Bearing(camera).Apart(new Bearing(target)) == 6);
            }
        }

        Assert.False(Sightline.Reads(Sells.Along, 6));
    }

    [Theory(DisplayName = "Turner and Stewart 2013 (Strength Cond J 35(1)): phosphocreatine is down by 40 to 70 % after 10 s of all-out work, so more than 10 s of heavy moves on end is noted")]
    [InlineData(16, 0)]
    [InlineData(17, 1)]
    [InlineData(30, 1)]
    public void Ten_seconds_of_effort(int hooks, int notes)
    {
        // A hook weighs 3 and takes a count, 0.6 s: 16 last 9.6 s, 17 last 10.2 s.
        var moves = Enumerable.Range(0, hooks).Select(i => new Move { Start = HalfCounts.FromCounts(i), Attacker = 0, Technique = "hook-left", Reaction = "head-turns" });
        var brief = Outside.Brief() with { Safety = Safety.Default with { HeadHitsPerDay = 10000 } };

        Assert.Equal(notes, Findings("exposure", brief, moves).Count(f => f.Severity == Severity.Note));
    }
}
