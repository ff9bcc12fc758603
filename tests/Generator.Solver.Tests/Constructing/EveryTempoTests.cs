using Generator.Domain;
using Generator.Library;
using Generator.Rules;
using Generator.Rules.Replaying;
using Generator.Solver.Constructing;
using Generator.Solver.Repertoires;
using Xunit.Abstractions;

namespace Generator.Solver.Tests.Constructing;

/// <summary>
/// Whatever the tempo, the techniques are there: each is looked for in a beginning of some moves that no rule forbids, for a cast of one skill against two attackers on a wide floor.
/// Counted twice: what the tempo takes away of that which the skill allows, and, for trained people, of all there are. Skill itself shuts 16 of 347 to them at every tempo: who is thrown over by their
/// own spring, or who leaps and spins in the air, is a stunt performer.
/// </summary>
public class EveryTempoTests(ITestOutputHelper output)
{
    /// <summary>Moves of the longest beginning looked at.</summary>
    private const int Deep = 5;

    /// <summary>Half hours and centimetres at which the two open: beside one another, one before and one behind the hero, and near each other.</summary>
    private static readonly Placement[][] Places = [Opens(0, 200, 3, 260), Opens(12, 200, 0, 260), Opens(0, 200, 2, 260)];

    [Theory]
    [InlineData(60, Skill.Trained)]
    [InlineData(100, Skill.Trained)]
    [InlineData(130, Skill.Trained)]
    [InlineData(160, Skill.Trained)]
    [InlineData(160, Skill.Novice)]
    [InlineData(160, Skill.Stunt)]
    public void Nearly_all_techniques_that_the_cast_may_do_are_found_at_every_tempo(int tempo, Skill skill)
    {
        var ground = new Ground(new Scene(BriefAt(tempo, skill), Drafts.Book), [true, true]);
        var book = ground.Scene.Book;
        var mayDo = book.Techniques.Where(t => IsForThese(t) && MayDo(book, t, skill)).Select(t => t.BaseId).ToHashSet(StringComparer.Ordinal);
        var all = book.Techniques.Where(IsForThese).Select(t => t.BaseId).Distinct(StringComparer.Ordinal).Count();
        var enough = Math.Max(mayDo.Count * 95, all * (skill == Skill.Novice ? 45 : 95));
        var found = new HashSet<string>(StringComparer.Ordinal);

        // Other places are looked at where nearly all are not found from these.
        foreach (var places in Places.TakeWhile(_ => found.Count * 100 < enough))
        {
            found.UnionWith(Found(ground, places).Select(t => book.Techniques[t]).Where(IsForThese).Select(t => t.BaseId));
        }

        Assert.Subset(mayDo, found);
        var counted = $"{skill} at {tempo}: {found.Count} of {mayDo.Count} that the skill allows, of {all} in all, {100m * found.Count / all:0.0} %; not found: {string.Join(", ", mayDo.Except(found, StringComparer.Ordinal))}";
        output.WriteLine(counted);
        Assert.True(found.Count * 100 >= enough, counted);
    }

    /// <summary>
    /// By the tempo alone: every technique lasts as long as trained people need for it. Kept to the counts of its record, one in nine would at 130 a minute and one in thirty at 140: of the first 306 it
    /// was 34 and 10.
    /// </summary>
    [Theory]
    [InlineData(60, 100, 100)]
    [InlineData(100, 100, 100)]
    [InlineData(130, 5, 15)]
    [InlineData(140, 1, 5)]
    [InlineData(160, 0, 2)]
    public void Every_technique_exists_at_every_tempo(int tempo, int leastKept, int mostKept)
    {
        bool Exists(Technique technique, Book book) => book.Technique(technique.Id).Length.Value * 30m / tempo >= technique.FewestSeconds;
        var (records, book) = (Drafts.Book.Techniques, Drafts.Book.At(new Tempo(tempo)));
        Assert.Empty(records.Where(t => !Exists(t, book)).Select(t => t.Id));
        Assert.InRange(100 * records.Count(t => Exists(t, Drafts.Book)) / records.Count, leastKept, mostKept);
    }

    /// <summary>Neither made for another mark or a thing on the floor, nor an answer to those alone who open on a knee: here nobody does.</summary>
    private static bool IsForThese(Technique technique) =>
        technique is { Travel: null, Uses: null, Prop: null, Two: null, IsAgainstPropsAlone: false } && !(technique.Needs.IsEmpty && !technique.Answers.IsEmpty && technique.Answers.Members.All(l => l.IsFromKnee));

    /// <summary>By the skill that its records ask for, the tempo left out.</summary>
    private static bool MayDo(Book book, Technique technique, Skill skill) =>
        technique.HeroSkill <= skill && technique.AttackerSkill <= skill && (technique.Reactions.Count == 0 || technique.Reactions.Any(r => book.Reaction(r).Skill <= skill));

    private static Brief BriefAt(int tempo, Skill skill) => new()
    {
        Tempo = new Tempo(tempo),
        Floor = new FloorPlan { Width = new(1600), Depth = new(1600), MarkX = new(800), MarkY = new(800) },
        Hero = new HeroPart { Name = "Ines", Skill = skill },
        Attackers = [new AttackerPart { Name = "Bruno", Skill = skill, Height = new(180) }, new AttackerPart { Name = "Wanda", Skill = skill, Height = new(172) }],
        Length = new Length(null, 40, 10),
        Safety = Safety.Default with { Runs = 1 },
    };

    private static Placement[] Opens(int one, int near, int other, int far) =>
        [new(new Bearing(one), new Centimetres(near), HalfCounts.Zero), new(new Bearing(other), new Centimetres(far), HalfCounts.Zero)];

    private static HashSet<int> Found(Ground ground, Placement[] places)
    {
        var expander = new Expander(ground, new Dice(1));
        var (found, pairs, situations) = (new HashSet<int>(), new HashSet<(int, int)>(), new HashSet<string>(StringComparer.Ordinal));
        var nodes = new Queue<Node>(ground.Openings(places));
        while (nodes.TryDequeue(out var node))
        {
            foreach (var row in Rows(ground, node).Where(r => !pairs.Contains((r.Technique, r.Reaction))))
            {
                var start = expander.Soonest(node, row, out var cue);
                if (start >= 0 && expander.Fitted(node, row with { Start = start, Cue = cue }) is { } child && pairs.Add((row.Technique, row.Reaction)))
                {
                    found.Add(row.Technique);
                    if (child.Depth < Deep && situations.Add(Situation(child.State)))
                    {
                        nodes.Enqueue(child);
                    }
                }
            }
        }

        return found;
    }

    private static IEnumerable<Row> Rows(Ground ground, Node node)
    {
        for (var a = 0; a < ground.Scene.Cast; a++)
        {
            if (node.IsOpening && node.First != a)
            {
                continue;
            }

            var menu = ground.Repertoire.Menus[a];
            foreach (var choice in ((IEnumerable<Choice[]>)[menu.Answers, menu.Setbacks, .. menu.FollowUps, .. menu.Escapes, .. menu.Beats]).SelectMany(c => c))
            {
                foreach (var reaction in choice.Reactions.DefaultIfEmpty(-1))
                {
                    yield return new Row(0, a, -1, Cue.None, choice.Attack, choice.Technique, reaction, 0);
                }
            }
        }

        foreach (var choice in node.IsOpening ? [] : (IEnumerable<Choice>)[.. ground.Repertoire.Recoveries, .. ground.Repertoire.Breaths])
        {
            yield return new Row(0, -1, -1, Cue.None, -1, choice.Technique, -1, 0);
        }
    }

    /// <summary>What decides over the next move, roughly.</summary>
    private static string Situation(FightState state) => string.Join(
        ' ',
        [state.Stance, state.Left, state.Right, state.Bound, state.LastTarget, .. state.Attackers.Select(a => $"{a.Posture} {a.Grip} {a.Distance / 25} {new Bearing(state.Facing).To(new Bearing(a.Bearing)).HalfHours / 3}")]);
}
