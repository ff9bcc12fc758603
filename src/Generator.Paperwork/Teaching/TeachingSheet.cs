using Generator.Domain;
using Generator.Paperwork.Text;
using Generator.Rules;
using Generator.Rules.Replaying;

namespace Generator.Paperwork.Teaching;

/// <summary>The teaching plan.</summary>
public static class TeachingSheet
{
    private const string Under = "       ";

    /// <summary>The whole sheet as plain text of fixed width, ending with a line feed.</summary>
    /// <param name="scene">The brief and the library worked out.</param>
    /// <param name="steps">The routine replayed.</param>
    /// <param name="plan">The plan of it.</param>
    /// <param name="from">Date of the first day; null numbers the days only.</param>
    public static string Of(Scene scene, IReadOnlyList<Step> steps, TeachingPlan plan, DateOnly? from) => Block.TextOf(Blocks(scene, steps, plan, from));

    /// <summary>What it says, piece by piece.</summary>
    public static IEnumerable<Block> Blocks(Scene scene, IReadOnlyList<Step> steps, TeachingPlan plan, DateOnly? from) =>
    [
        Block.Title("Teaching plan: " + scene.Brief.Title),
        Block.Rule,
        Block.Caution(Cautions.Sheet),
        Block.Gap,
        Block.Heading("Phrases"),
        Block.Prose("Cut where least is under way. Each phrase begins with the last move of the one before, so that the joins are learnt too. " + Words.Entrances),
        Block.Gap,
        .. plan.Phrases.SelectMany(p => Phrase(scene, steps, p)),
        .. Ladder(scene.Pulse, steps, plan.Phrases),
        Block.Gap,
        .. Budget(scene, plan),
        Block.Gap,
        .. Days(scene.Pulse, plan, from),
    ];

    private static IEnumerable<Block> Phrase(Scene scene, IReadOnlyList<Step> steps, Phrase phrase)
    {
        var (first, last) = (steps[phrase.First - 1], steps[phrase.Last - 1]);
        var (from, to) = phrase.SpanOf(steps);
        var who = phrase.Of(steps).Where(s => s.HasTarget).Select(s => Page.Clean(scene.Brief.Attackers[s.Row.Attacker].Name)).Distinct();
        yield return Block.Row(("phrase " + Words.Number(phrase.Number), 9), ($"moves {Words.Number(phrase.First)} to {Words.Number(phrase.Last)}", 16), ($"counts {Words.Count(from)} to {Words.Count(to)}", 20), (string.Join(", ", who), 27));
        if (phrase.Number > 1 && first.Technique is { } picked)
        {
            yield return Block.Item(Under + "picks up from ", $"move {Words.Number(phrase.First)}, {Words.AtCount(first.Start)}: {picked.Name}");
        }

        var moment = phrase.Last < steps.Count ? steps[phrase.Last].Start : last.End;
        yield return Block.Item(Under + "stops with ", Standstill.Of(scene, last.After, moment));
        if (phrase.Last < steps.Count)
        {
            yield return Block.Item(Under, CarryOver.Of(last, steps[phrase.Last]) == 0 ? "a stable moment to stop" : "not a stable moment: remember who is where, and set it up again to go on");
        }

        yield return Block.Gap;
    }

    private static IEnumerable<Block> Ladder(Pulse pulse, IReadOnlyList<Step> steps, IReadOnlyList<Phrase> phrases)
    {
        yield return Block.Heading("Speeds", "seconds for each phrase, once through");
        yield return Block.Prose($"Performance speed is the routine's tempo, {PulseWords.Of(pulse)}. At quarter and half speed falls are walked down and blows only shown.");
        yield return Block.Columns([(string.Empty, 16), .. Speed.Ladder.Select(s => (s.ToString(), 13))]);
        yield return Ladder("metronome", s => s.MetronomeOf(pulse));
        foreach (var phrase in phrases)
        {
            var (from, to) = phrase.SpanOf(steps);
            yield return Ladder("phrase " + Words.Number(phrase.Number), s => s.TimeOf(from, to, pulse).ToTenths());
        }

        if (steps.Count > 0)
        {
            var whole = PaperSource.EndOf(steps);
            yield return Ladder("the whole", s => s.TimeOf(0, whole, pulse).ToTenths());
        }
    }

    private static Block Ladder(string what, Func<Speed, string> of) => Block.Row([(what, 16), .. Speed.Ladder.Select(s => (of(s), 13))]);

    private static IEnumerable<Block> Budget(Scene scene, TeachingPlan plan)
    {
        var tempo = scene.Pulse.Slowest;
        yield return Block.Heading("What a day may ask of each performer", "one run / whole day");
        yield return Block.Prose($"Falls and head-height hits after the brief's caps for {Words.Many(scene.Brief.Safety.Runs, "run")}, high effort as much as the planned runs take. The performer may always ask for less.");
        yield return Block.Columns(("", 20), ("falls", 11), ("head-height hits", 17), ("high effort", 20));
        for (var p = 0; p < plan.Run.Count; p++)
        {
            var (run, day) = (plan.Run[p], plan.Budget[p]);
            string Seconds(int effort) => ExactSeconds.Of(new HalfCounts(effort), tempo).ToTenths();
            yield return Block.Row(
                (p == 0 ? scene.Brief.Hero.Name : scene.Brief.Attackers[p - 1].Name, 20),
                ($"{Words.Number(run.Falls)} / {Words.Number(day.Falls)}", 11),
                ($"{Words.Number(run.HeadHits)} / {Words.Number(day.HeadHits)}", 17),
                ($"{Seconds(run.Effort)} / {Seconds(day.Effort)} s", 20));
        }
    }

    private static IEnumerable<Block> Days(Pulse pulse, TeachingPlan plan, DateOnly? from)
    {
        var dates = from is { } date ? RehearsalDates.Of(date, plan.Days.Count) : null;
        yield return Block.Heading("Days");
        yield return Block.Prose("Repeats are upper bounds, common practice, no source. Minutes in motion are all repeats together; talk, setting up again and rest come on top. Break after 55 minutes for 5, or after 80 for 10 (US stage practice), or as your own terms say.");
        foreach (var block in DayStrip.Of(plan.Days, dates))
        {
            yield return block;
        }

        foreach (var day in plan.Days)
        {
            yield return Block.Gap;
            yield return Block.Item($"Day {Words.Number(day.Number)}  ", (dates is null ? string.Empty : RehearsalDates.Label(dates[day.Number - 1]) + ": ") + $"{day.Aim}, {day.MotionText}");
            foreach (var block in day.Drills.SelectMany(d => Drill(pulse, d)))
            {
                yield return block;
            }
        }
    }

    private static Block[] Drill(Pulse pulse, Drill drill)
    {
        var repeats = drill.Repeats == 0 ? "mark it only" : Words.Many(drill.Repeats, "time");
        var held = drill.Repeats < drill.Wanted ? $"{Page.Clean(drill.HeldBackBy)} has no more falls or effort left this day" : string.Empty;
        return [Block.Row((drill.What, 25), ($"{drill.Speed} speed", 19), ("metronome " + drill.Speed.MetronomeOf(pulse), 16), (repeats, 12)), Block.Item("        ", held)];
    }
}
