using Generator.Domain;
using Generator.Rules;
using Generator.Solver.Proving;

namespace Generator.Solver.Refuting;

/// <summary>A brief worked out for the arguments: what moves it leaves possible at all, and which of them its hero moments want. Worked out when first asked for.</summary>
internal sealed class Workings
{
    private readonly Dictionary<(string What, int Attacker), object> known = [];
    private readonly Lazy<MoveClasses> classes;
    private readonly Lazy<IReadOnlyList<MoveClass>> moves;
    private readonly Lazy<PlanSize> size;
    private readonly Lazy<IReadOnlyList<WantedMoment>> moments;

    public Workings(Scene scene)
    {
        Scene = scene;
        classes = new(() => new MoveClasses(scene));
        moves = new(() => [.. classes.Value.All.Where(c => !(c.Traits.Setback && Brief.Setbacks is 0) && !(c.Traits.Pause && Brief.Pauses is 0))]);
        size = new(() => PlanSize.Of(Brief, Moves.Select(c => c.Shortest).DefaultIfEmpty(1).Min()));
        moments = new(() => [.. Enumerable.Range(0, Brief.Moments.Count).Where(m => classes.Value.FirstWanted[m] >= 0).Select(m => new WantedMoment(Brief.Moments[m], classes.Value.FirstWanted[m], Moves))]);
    }

    public Scene Scene { get; }

    /// <summary>Worked out once for each attacker.</summary>
    public T Once<T>(string what, int attacker, Func<T> work)
        where T : class
    {
        if (!known.TryGetValue((what, attacker), out var was))
        {
            known[(what, attacker)] = was = work();
        }

        return (T)was;
    }

    public Brief Brief => Scene.Brief;

    /// <summary>Every move that bodies, floor, tempo and the brief's setbacks and pauses leave possible.</summary>
    public IReadOnlyList<MoveClass> Moves => moves.Value;

    /// <summary>Fewest and most moves, soonest and latest end.</summary>
    public PlanSize Size => size.Value;

    /// <summary>The hero moments.</summary>
    public IReadOnlyList<WantedMoment> Moments => moments.Value;

    /// <summary>Attackers who must be out at the end.</summary>
    public IEnumerable<int> MustOut => Enumerable.Range(0, Scene.Cast).Where(IsToBeOut);

    public bool IsToBeOut(int attacker) => Brief.Ending?.Out.Contains(Brief.Attackers[attacker].Name) == true;

    public string Name(int attacker) => Brief.Attackers[attacker].Name;

    /// <summary>Half counts from the start before which nothing can concern an attacker: a move begins at most the time of its contact before they are in.</summary>
    public int InFrom(int attacker) => Math.Max(0, (Brief.Attackers[attacker].Entrance?.Value ?? 0) - Scene.Settle.ContactAfter.Value);

    /// <summary>
    /// Moments that are different moves in every routine, as many as can be had by taking one after the other: two of which one move can be a part of both
    /// might be the same moves.
    /// </summary>
    public IReadOnlyList<WantedMoment> Apart(IEnumerable<WantedMoment> of)
    {
        var chosen = new List<WantedMoment>();
        foreach (var moment in of)
        {
            if (chosen.TrueForAll(c => !Moves.Any(m => (m.Traits.Wanted & c.Bits) != 0 && (m.Traits.Wanted & moment.Bits) != 0)))
            {
                chosen.Add(moment);
            }
        }

        return chosen;
    }

    /// <summary>"Ada, Bruno and Cleo".</summary>
    public static string List(IReadOnlyList<string> words) => words.Count < 2 ? string.Concat(words) : string.Join(", ", words.Take(words.Count - 1)) + " and " + words[^1];

    /// <summary>"1 count", "2.5 counts".</summary>
    public static string Counts(int halfCounts) => new HalfCounts(halfCounts).InWords;
}
