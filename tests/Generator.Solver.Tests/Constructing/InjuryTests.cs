using System.Globalization;
using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Judging;
using Generator.Rules.Replaying;
using Generator.Solver.Revising;
using Xunit.Abstractions;

namespace Generator.Solver.Tests.Constructing;

/// <summary>No draft and no revision loads an injured part, by the library's own files (<see cref="BodyLedger"/>) and not by the program's reading of limits.</summary>
public class InjuryTests(ITestOutputHelper output)
{
    /// <summary>Drafts of each kind; GENERATOR_INJURED asks for another number, of which 20 is a thorough one.</summary>
    private static readonly int Seeds = int.TryParse(Environment.GetEnvironmentVariable("GENERATOR_INJURED"), CultureInfo.InvariantCulture, out var asked) ? asked : 5;

    /// <summary>Three times as many, since a neck is loaded in few moves.</summary>
    private static readonly Lazy<IReadOnlyList<Routine>> Sound = new(() => [.. Enumerable.Range(1, 3 * Seeds).Select(s => Drafted(Brief(), s)).OfType<Routine>()]);

    public static TheoryData<string> Injuries => ["injured-right-knee", "injured-left-hip", "injured-right-wrist", "injured-left-shoulder", "injured-neck"];

    [Theory]
    [MemberData(nameof(Injuries))]
    public void A_hero_is_never_asked_to_load_what_is_injured(string limit)
    {
        var hurt = Brief() with { Hero = new HeroPart { Name = "Ines", Skill = Skill.Stunt, Limits = [limit] } };
        var drafts = Enumerable.Range(1, Seeds).Select(s => Drafted(hurt, s)).OfType<Routine>().ToList();
        var (moves, without) = (drafts.Sum(d => d.Moves.Count), Sound.Value.Sum(d => Loads(d, -1, limit)));
        output.WriteLine($"{drafts.Count} drafts, {moves} moves, {drafts.Sum(BodyLedger.Changes)} changes of stance, {drafts.Sum(BodyLedger.Holding)} while somebody else is held or grips; a sound hero loads it {without} times in {Sound.Value.Sum(d => d.Moves.Count)} moves");
        Assert.All(drafts, d => Assert.Equal(0, Loads(d, -1, limit)));
        Assert.True(drafts.Count >= Seeds * 3 / 4 && without > Seeds, $"{drafts.Count} drafts; loaded {without} times by a sound hero");
    }

    [Theory]
    [MemberData(nameof(Injuries))]
    public void Nor_is_an_attacker(string limit)
    {
        var hurt = Brief() with { Attackers = [Brief().Attackers[0] with { Limits = [limit] }, Brief().Attackers[1]] };
        var drafts = Enumerable.Range(1, Seeds).Select(s => Drafted(hurt, s)).OfType<Routine>().ToList();
        var (moves, without) = (drafts.Sum(d => d.Moves.Count(m => m.Attacker == 0)), Sound.Value.Sum(d => Loads(d, 0, limit)));
        output.WriteLine($"{drafts.Count} drafts, {moves} moves, {drafts.Sum(BodyLedger.Holding)} of all while somebody else is held or grips; a sound attacker loads it {without} times in {Sound.Value.Sum(d => d.Moves.Count(m => m.Attacker == 0))} moves");
        Assert.All(drafts, d => Assert.Equal(0, Loads(d, 0, limit)));
        Assert.True(drafts.Count >= Seeds * 3 / 4 && moves > Seeds && without > Seeds, $"{drafts.Count} drafts, {moves} moves; loaded {without} times by a sound one");
    }

    /// <summary>Wanda is kicked while Bruno or Piet is held as the base, who stands on both legs as firm as a post.</summary>
    [Fact]
    public void Nobody_is_the_base_of_a_kick_at_another_on_a_leg_that_must_not_carry()
    {
        const string limit = "left-knee: no carry";
        var kicked = new Moment([new MomentMove("hold-and-kick", "Wanda", null, null)], null, null);
        var sound = Brief() with { Moments = [kicked], Attackers = [.. Brief().Attackers, new AttackerPart { Name = "Piet", Skill = Skill.Stunt }], Setbacks = null };
        var hurt = sound with { Attackers = [sound.Attackers[0] with { Limits = [limit] }, .. sound.Attackers.Skip(1)] };
        var spared = Bases(hurt).ToList();
        output.WriteLine($"base of the kick with Bruno hurt: {string.Join(' ', spared)}");

        // With nobody hurt the search ends with the first of whom Bruno is the base.
        Assert.Contains(0, Bases(sound));
        Assert.True(spared.Count >= 2 * Seeds && spared.All(b => b == 2), string.Join(' ', spared));

        static IEnumerable<int> Bases(Brief brief) => Enumerable.Range(1, 3 * Seeds).Select(s => Drafted(brief, s)).OfType<Routine>()
            .Select(d => Replay.Of(new Scene(d.Brief, Drafts.Book), d).First(s => s.Technique!.GoesBy("hold-and-kick")).Before.Attackers.Select((a, i) => (a, i)).First(p => p.a.Posture.IsControlled()).i);
    }

    /// <summary>The injury comes when the fight stands: what is put in for what must go does not load it either, nor does anything else.</summary>
    [Theory]
    [InlineData("injured-right-knee", -1)]
    [InlineData("injured-right-knee", 0)]
    [InlineData("injured-right-wrist", -1)]
    [InlineData("injured-right-wrist", 0)]
    [InlineData("injured-left-shoulder", -1)]
    [InlineData("injured-left-shoulder", 0)]
    [InlineData("injured-neck", -1)]
    [InlineData("injured-neck", 0)]
    [InlineData("right-knee: no kneel, no bend", 0)]
    public void A_revision_puts_in_nothing_that_loads_it(string limit, int who)
    {
        var (revised, swapped) = (0, 0);
        foreach (var routine in Sound.Value.Where(d => Loads(d, who, limit) > 0).OrderBy(d => Loads(d, who, limit)).Take(Math.Max(2, Seeds / 2)))
        {
            var brief = who < 0
                ? routine.Brief with { Hero = routine.Brief.Hero with { Limits = [limit] } }
                : routine.Brief with { Attackers = [.. routine.Brief.Attackers.Select((a, i) => i == who ? a with { Limits = [limit] } : a)] };
            Assert.Contains(Audit.Of(new Scene(brief, Drafts.Book), routine with { Brief = brief }).Findings, f => f.Rule == "able");
            using var first = new CancellationTokenSource();
            if (Revise.Of(routine, brief, Drafts.Book, new ReviseOptions { Time = Drafts.Hang }, _ => first.Cancel(), first.Token).Revised is { } change)
            {
                (revised, swapped) = (revised + 1, swapped + change.Change.Changed);
                Assert.Equal(0, Loads(StanceNotes.Written(change.Scene, change.Routine), who, limit));
            }
        }

        output.WriteLine($"{revised} revised, {swapped} moves changed");
        Assert.True(revised >= 1 && swapped > 0, $"{revised} revised, {swapped} moves changed");
    }

    private static Brief Brief() => Drafts.Plain() with { Attackers = [new AttackerPart { Name = "Bruno", Skill = Skill.Stunt }, new AttackerPart { Name = "Wanda", Skill = Skill.Stunt }], Setbacks = 1 };

    private static Routine? Drafted(Brief brief, int seed) =>
        Drafts.Rounds(brief, seed, 1).Routine is { } routine ? StanceNotes.Written(new Scene(routine.Brief, Drafts.Book), routine) : null;

    /// <summary>How often somebody is asked something that a limit rules out: everything for an injured joint, else the acts it names.</summary>
    private static int Loads(Routine routine, int who, string limit)
    {
        var (joint, acts) = limit.StartsWith("injured-", StringComparison.Ordinal) ? (limit["injured-".Length..], []) : (limit.Split(": ")[0], limit.Split(": ")[1].Replace("no ", string.Empty, StringComparison.Ordinal).Split(", "));
        return BodyLedger.Of(routine).Count(a => a.Who == who && a.What.Split(' ') is var what && what[0] == joint && (acts.Length == 0 || acts.Contains(what[1])));
    }
}
