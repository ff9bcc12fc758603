using Generator.Domain;
using Generator.Paperwork.Text;
using Generator.Rules;
using Generator.Rules.Bodies;
using Generator.Rules.Replaying;

namespace Generator.Paperwork.SafetyPapers;

/// <summary>What the hazard lists have in common: names, moments, and how skill and floor shift a likelihood.</summary>
internal sealed class Finder(PaperSource source)
{
    public PaperSource Source { get; } = source;

    public Scene Scene => Source.Scene;

    public Brief Brief => Source.Brief;

    public string Hero => Name(-1);

    /// <summary>The hero, all attackers, and the ally.</summary>
    public IReadOnlyList<string> Everybody => [.. AllyWords.Everybody(Brief).Select(p => Page.Clean(p.Name))];

    /// <summary>The name of a performer, the hero being −1.</summary>
    public string Name(int who) => StepDetails.Name(Scene, who);

    /// <summary>The same at a move, −1 being whoever makes it: the hero or the ally.</summary>
    public static string At(Step step, int who) => StepDetails.Name(step.Scene, who);

    /// <summary>What the hero's mark of a moment is called: "the mark" where there is one alone.</summary>
    public string MarkOf(FightState state) => StepDetails.TheMark(Scene, state.Mark);

    /// <summary>A bearing from the mark of a moment: "3 o'clock", with several marks "3 o'clock of window".</summary>
    public string Seen(FightState state, int bearing) => Words.Clock(bearing) + (Brief.Travels || Brief.Ally is not null ? " of " + MarkOf(state) : string.Empty);

    /// <summary>Centimetres from the edge of an obstacle to a place.</summary>
    public int From(Obstacle obstacle, Place place)
    {
        var (x, y) = (Brief.Floor.MarkX.Value + place.X, Brief.Floor.MarkY.Value + place.Y);
        var aside = Math.Max(0, Math.Max(obstacle.X.Value - x, x - obstacle.X.Value - obstacle.Width.Value));
        var ahead = Math.Max(0, Math.Max(obstacle.Y.Value - y, y - obstacle.Y.Value - obstacle.Depth.Value));
        return (int)Math.Round(Math.Sqrt((aside * aside) + (ahead * ahead)), MidpointRounding.AwayFromZero);
    }

    /// <summary>The fewest centimetres from the edge of an obstacle to the hero's way in a travel move, to a hundredth of the way.</summary>
    public int OnTheWay(Obstacle obstacle, Step step)
    {
        var (start, end) = (step.Mark, Scene.Marks[step.Travels]);
        return Enumerable.Range(0, 101).Min(i => From(obstacle, start.Towards(end, i / 100.0)));
    }

    /// <summary>Steps with a technique.</summary>
    public IEnumerable<Step> Done => Source.Steps.Where(s => s.Technique is not null);

    /// <summary>
    /// Before any control, by how often it is done in a day of runs: up to 6 times unlikely, up to 24 possible, more often likely; one step up when
    /// anybody concerned is a novice. Common practice, no source.
    /// </summary>
    public Likelihood Often(int timesARun, IEnumerable<string> who) => ForSkill(
        (timesARun * Brief.Safety.Runs) switch
        {
            <= 6 => Likelihood.Unlikely,
            <= 24 => Likelihood.Possible,
            _ => Likelihood.Likely,
        },
        who);

    /// <summary>One step up when anybody named is a novice.</summary>
    public Likelihood ForSkill(Likelihood likelihood, IEnumerable<string> who)
    {
        var novices = AllyWords.Everybody(Brief).Where(p => p.Skill == Skill.Novice).Select(p => Page.Clean(p.Name)).ToHashSet(StringComparer.Ordinal);
        return who.Any(novices.Contains) ? Up(likelihood) : likelihood;
    }

    public static Likelihood Up(Likelihood likelihood) => likelihood == Likelihood.Likely ? likelihood : likelihood + 1;

    /// <summary>A hazard at some steps, or nothing when there are none; made from those concerned and how often it is done in a run.</summary>
    public static IEnumerable<Hazard> At(IReadOnlyCollection<(Step Step, string Who)> places, Func<IReadOnlyList<string>, int, Hazard> make)
    {
        if (places.Count == 0)
        {
            return [];
        }

        IReadOnlyList<string> who = [.. places.Select(p => p.Who).Distinct(StringComparer.Ordinal)];
        return [make(who, places.Count) with { Who = who, Moves = [.. places.Select(p => p.Step).DistinctBy(s => s.Index).OrderBy(s => s.Index)] }];
    }

    public static IReadOnlyList<Control> Controls(string? designOut, string? guard, params IReadOnlyList<string> inform) =>
    [
        .. designOut is null ? [] : new[] { new Control(ControlOrder.DesignOut, designOut) },
        .. guard is null ? [] : new[] { new Control(ControlOrder.Guard, guard) },
        .. inform.Select(i => new Control(ControlOrder.Inform, i)),
    ];
}
