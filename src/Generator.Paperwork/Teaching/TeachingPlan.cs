using System.Globalization;
using Generator.Rules;
using Generator.Rules.Replaying;

namespace Generator.Paperwork.Teaching;

/// <summary>
/// From the first phrase at quarter speed to the planned runs. Two new phrases a day go through quarter and half speed, the next day through
/// three-quarter, the day after through performance speed and into everything before them; then the whole; then the runs. Numbers of phrases
/// and repeats are common practice, no source.
/// </summary>
public sealed class TeachingPlan
{
    /// <summary>New phrases on one day.</summary>
    public const int PhrasesADay = 2;

    private TeachingPlan(IReadOnlyList<Phrase> phrases, IReadOnlyList<RehearsalDay> days, IReadOnlyList<Load> run, IReadOnlyList<Load> budget) =>
        (Phrases, Days, Run, Budget) = (phrases, days, run, budget);

    public IReadOnlyList<Phrase> Phrases { get; }

    public IReadOnlyList<RehearsalDay> Days { get; }

    /// <summary>What one run asks of everybody, hero first.</summary>
    public IReadOnlyList<Load> Run { get; }

    /// <summary>What a day may ask of everybody, hero first.</summary>
    public IReadOnlyList<Load> Budget { get; }

    public static TeachingPlan Of(Scene scene, IReadOnlyList<Step> steps, IReadOnlyList<Phrase> phrases)
    {
        var budget = Load.BudgetOf(scene, steps);
        var days = phrases.Count == 0 ? [] : Outline(scene, phrases).Select((day, i) => Share(scene, steps, budget, day with { Number = i + 1 })).ToList();
        return new TeachingPlan(phrases, days, Load.Of(scene, steps), budget);
    }

    private static IEnumerable<RehearsalDay> Outline(Scene scene, IReadOnlyList<Phrase> phrases)
    {
        var groups = phrases.Chunk(PhrasesADay).ToArray();
        for (var day = 0; day < groups.Length + 2; day++)
        {
            yield return new RehearsalDay(0, Aim(groups, day),
            [
                .. Group(groups, day).SelectMany(p => new[] { Of(p, Speed.Quarter, 4), Of(p, Speed.Half, 4) }),
                .. Group(groups, day - 1).Select(p => Of(p, Speed.ThreeQuarter, 3)),
                .. Group(groups, day - 2).Select(p => Of(p, Speed.Performance, 2)),
                .. Group(groups, day - 2).TakeLast(1).Where(p => p.Number > 1).Select(p => new Drill("from the top to phrase " + Number(p.Number), 1, p.Last, Speed.ThreeQuarter, 1, 0)),
            ]);
        }

        var last = phrases[^1].Last;
        yield return new RehearsalDay(0, "the whole, rung by rung", [.. Speed.Ladder.Skip(1).Select(s => new Drill("the whole", 1, last, s, s.IsMarked ? 1 : 2, 0))]);
        yield return new RehearsalDay(0, "the planned runs, after a fight call", [new Drill("the whole", 1, last, Speed.Performance, scene.Brief.Safety.Runs, 0)]);
    }

    private static string Aim(Phrase[][] groups, int day) => day < groups.Length
        ? "learn " + Names(groups[day])
        : "bring " + Names([.. Group(groups, day - 1), .. Group(groups, day - 2)]) + " up to speed";

    private static string Names(Phrase[] phrases) => phrases.Length == 1
        ? "phrase " + Number(phrases[0].Number)
        : $"phrases {string.Join(", ", phrases.Select(p => p.Number).Order().SkipLast(1).Select(Number))} and {Number(phrases.Max(p => p.Number))}";

    private static Phrase[] Group(Phrase[][] groups, int index) => index >= 0 && index < groups.Length ? groups[index] : [];

    private static Drill Of(Phrase phrase, Speed speed, int wanted) => new("phrase " + Number(phrase.Number), phrase.First, phrase.Last, speed, wanted, 0);

    private static RehearsalDay Share(Scene scene, IReadOnlyList<Step> steps, IReadOnlyList<Load> budget, RehearsalDay day)
    {
        var nothing = new Load[budget.Count];
        var loads = day.Drills.Select(d => d.Speed.IsMarked ? nothing : Load.Of(scene, steps.Skip(d.First - 1).Take(d.Last - d.First + 1))).ToList();
        var shares = RepeatShare.Of([.. day.Drills.Select(d => d.Wanted)], loads, budget);
        var drills = day.Drills.Zip(shares, (d, s) => d with { Repeats = s.Repeats, HeldBackBy = Name(scene, s.HeldBackBy) }).ToList();
        return day with { Drills = drills, Motion = drills.Aggregate(ExactSeconds.Zero, (sum, d) => sum + d.TimeOf(steps, scene.Pulse)) };
    }

    private static string Name(Scene scene, int performer) => performer switch
    {
        < 0 => string.Empty,
        0 => scene.Brief.Hero.Name,
        _ => scene.Brief.Attackers[performer - 1].Name,
    };

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}
