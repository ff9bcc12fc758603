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
    private const int Seeds = 20;

    private static readonly Lazy<IReadOnlyList<Routine>> Sound = new(() => [.. Enumerable.Range(1, Seeds).Select(s => Drafted(Brief(), s)).OfType<Routine>()]);

    public static TheoryData<string> Injuries => ["injured-right-knee", "injured-left-hip", "injured-right-wrist", "injured-left-shoulder", "injured-neck"];

    [Theory]
    [MemberData(nameof(Injuries))]
    public void A_hero_is_never_asked_to_load_what_is_injured(string limit)
    {
        var hurt = Brief() with { Hero = new HeroPart { Name = "Ines", Skill = Skill.Stunt, Limits = [limit] } };
        var drafts = Enumerable.Range(1, Seeds).Select(s => Drafted(hurt, s)).OfType<Routine>().ToList();
        var (moves, without) = (drafts.Sum(d => d.Moves.Count), Sound.Value.Sum(d => Loads(d, -1, limit)));
        output.WriteLine($"{drafts.Count} drafts, {moves} moves, {drafts.Sum(BodyLedger.Changes)} changes of stance; a sound hero loads it {without} times in {Sound.Value.Sum(d => d.Moves.Count)} moves");
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
        output.WriteLine($"{drafts.Count} drafts, {moves} moves; a sound attacker loads it {without} times in {Sound.Value.Sum(d => d.Moves.Count(m => m.Attacker == 0))} moves");
        Assert.All(drafts, d => Assert.Equal(0, Loads(d, 0, limit)));
        Assert.True(drafts.Count >= Seeds * 3 / 4 && moves > Seeds && without > Seeds, $"{drafts.Count} drafts, {moves} moves; loaded {without} times by a sound one");
    }

    /// <summary>The injury comes when the fight stands: what is put in for what must go does not load it either, nor does anything else.</summary>
    [Theory]
    [InlineData("injured-right-knee", -1)]
    [InlineData("injured-right-wrist", 0)]
    [InlineData("right-knee: no kneel, no bend", 0)]
    public void A_revision_puts_in_nothing_that_loads_it(string limit, int who)
    {
        var (revised, swapped) = (0, 0);
        foreach (var routine in Sound.Value.Where(d => Loads(d, who, limit) > 0).Take(2))
        {
            var brief = who < 0
                ? routine.Brief with { Hero = routine.Brief.Hero with { Limits = [limit] } }
                : routine.Brief with { Attackers = [.. routine.Brief.Attackers.Select((a, i) => i == who ? a with { Limits = [limit] } : a)] };
            Assert.Contains(Audit.Of(new Scene(brief, Drafts.Book), routine with { Brief = brief }).Findings, f => f.Rule == "able");
            if (Revise.Of(routine, brief, Drafts.Book, new ReviseOptions { Time = TimeSpan.FromSeconds(2) }).Revised is { } change)
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
