using Generator.Domain;
using Generator.Library.Words;
using Load = Generator.Paperwork.Teaching.Load;
using Generator.Paperwork.Teaching;
using Generator.Paperwork.Text;

namespace Generator.Paperwork.SafetyPapers;

/// <summary>What comes from the people and from doing it again and again.</summary>
internal static class PeopleHazards
{
    public static IEnumerable<Hazard> Of(Finder find)
    {
        yield return Repetition(find);
        yield return Earlier(find);
    }

    private static Hazard Repetition(Finder find)
    {
        var runs = find.Brief.Safety.Runs;
        var (loads, budget) = (Load.Of(find.Scene, find.Source.Steps), Load.BudgetOf(find.Scene, find.Source.Steps));
        var over = loads.Zip(budget, (l, b) => !(l * runs).FitsIn(b)).Any(o => o);
        var most = find.Everybody.Zip(loads).Where(p => p.Second.Falls > 0).Select(p => $"{p.First} {Words.Many(p.Second.Falls * runs, "fall")}").ToList();
        return new Hazard
        {
            Title = "Repetition and tiredness",
            Who = find.Everybody,
            Moves = [],
            How = $"Strain that adds up over {Words.Many(runs, "run")}{(most.Count == 0 ? "." : ": " + string.Join(", ", most) + ".")} Tired people come late.",
            Harm = Harm.Moderate,
            Likelihood = find.ForSkill(over ? Likelihood.Likely : Likelihood.Possible, find.Everybody),
            Controls = Finder.Controls(
                "Plan fewer runs, or share the falls among the cast.",
                "Stop at the day's caps on falls and head-height hits; breaks as the terms say.",
                "Everybody may say \"enough\" without giving a reason."),
        };
    }

    private static Hazard Earlier(Finder find)
    {
        var limits = AllyWords.Everybody(find.Brief)
            .Where(p => LimitText.Of(p).Count > 0)
            .Select(p => $"{Page.Clean(p.Name)} ({string.Join(", ", LimitText.Of(p))})")
            .ToList();
        return new Hazard
        {
            Title = "Earlier injuries, limits and clothes",
            Who = find.Everybody,
            Moves = [],
            How = "Earlier injury raises the risk of another (Evans, Evans and Carvajal 1998)." + (limits.Count == 0 ? " The brief names no limits: ask." : " The brief names " + string.Join("; ", limits) + ".")
                + string.Concat(HurtLines.Everybody(find.Source.Steps).Select(h => $" In the fight {h}; it is acted, and real pain is said at once.")),
            Harm = Harm.Serious,
            Likelihood = Likelihood.Unlikely,
            Controls = Finder.Controls(
                "Change the moves that a performer cannot do that day.",
                "No jewellery; firm, non-slip shoes; rehearse in the clothes of the performance.",
                "Ask everybody in confidence before the first rehearsal and at every fight call."),
        };
    }
}
