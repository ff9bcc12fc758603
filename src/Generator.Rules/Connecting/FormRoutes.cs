using Generator.Domain;
using Generator.Library;
using Generator.Rules.Replaying;

namespace Generator.Rules.Connecting;

/// <summary>
/// How many moves away a technique is from every form, by the fewest of all ways there, and which moves are the first of those ways. Setbacks are a
/// purse: a way may take no more of them than are left.
/// </summary>
public sealed class FormRoutes
{
    /// <summary>More setbacks than this shorten no way.</summary>
    public const int MostSetbacks = 3;

    /// <summary>No way leads there.</summary>
    public const int Never = int.MaxValue;

    private static readonly Posture[] Open =
    [
        Posture.Folded, Posture.HeadBack, Posture.Turned, Posture.OffBalance, Posture.Kneeling, Posture.FaceDown, Posture.OnBack,
    ];

    private readonly FormGraph graph;
    private readonly bool[] goals;
    private readonly bool[] possible;
    private readonly bool[] isSetback;
    private readonly int[,] fewest;
    private readonly int[,] direct;
    private readonly PostureSet[,] onPosture;

    /// <param name="graph">The forms of the library.</param>
    /// <param name="goals">The techniques that it is about, one flag each.</param>
    /// <param name="possible">What this hero can do here at all, one flag each.</param>
    public FormRoutes(FormGraph graph, bool[] goals, bool[] possible)
    {
        (this.graph, this.goals, this.possible) = (graph, goals, possible);
        isSetback = [.. graph.Book.Techniques.Select(t => t.Family == Family.Setback)];
        var count = graph.Forms.Count;
        (fewest, direct, onPosture) = (new int[MostSetbacks + 1, count], new int[2, count], new PostureSet[2, count]);
        for (var f = 0; f < count; f++)
        {
            Look(f);
            for (var k = 0; k <= MostSetbacks; k++)
            {
                fewest[k, f] = direct[k == 0 ? 0 : 1, f];
            }
        }

        Relax();
    }

    /// <summary>One of the techniques works, or could work after a blow that leaves somebody open, from a stance in which a fight opens: no way need be looked for.</summary>
    public static bool AreNear(Book book, bool[] goals)
    {
        var steps = new FormSteps(book);
        foreach (var stance in FormGraph.Openings)
        {
            for (var t = 0; t < goals.Length; t++)
            {
                var form = HeroForm.FreeIn(stance);
                if (goals[t] && (IsDirect(steps, form, FormSteps.LongGap, t) || Array.Exists(Open, p => steps.OnPosture(form, FormSteps.LongGap, t, p).Any())))
                {
                    return true;
                }
            }
        }

        return false;
    }

    /// <summary>Fewest moves, the technique included, from a form with so many setbacks to spend; <see cref="Never"/> when there is no way.</summary>
    /// <param name="form">Where the hero is. One that the graph leaves out counts as two moves more than the opening.</param>
    /// <param name="setbacks">How many setbacks may still come.</param>
    public int From(HeroForm form, int setbacks)
    {
        var (f, k) = (graph.NumberOf(form), Purse(setbacks));
        return f >= 0 ? fewest[k, f] : fewest[k, 0] is var opening && opening == Never ? Never : opening + 2;
    }

    /// <summary>The technique works from the form on a free attacker in this posture.</summary>
    public bool WorksOn(HeroForm form, Posture posture, int setbacks) => graph.NumberOf(form) is >= 0 and var f && onPosture[Index(setbacks), f].Contains(posture);

    /// <summary>The first moves of the shortest ways from a form: technique and reaction, by their positions in the book. Empty next to the goal.</summary>
    public IReadOnlySet<(int Technique, int Reaction)> FirstMoves(HeroForm form, int setbacks)
    {
        var first = new HashSet<(int, int)>();
        var (f, k) = (graph.NumberOf(form), Purse(setbacks));
        if (f < 0 || fewest[k, f] is <= 1 or Never)
        {
            return first;
        }

        foreach (var way in graph.From(f))
        {
            if (possible[way.Technique] && Over(way, k) is var moves && moves == fewest[k, f])
            {
                first.Add((way.Technique, way.Reaction));
            }
        }

        return first;
    }

    private static int Purse(int setbacks) => Math.Clamp(setbacks, 0, MostSetbacks);

    private static int Index(int setbacks) => setbacks > 0 ? 1 : 0;

    /// <summary>What of the goal works from a form at once: on an attack, on somebody ready or tied, without a target; or on which postures.</summary>
    private void Look(int f)
    {
        (direct[0, f], direct[1, f]) = (Never, Never);
        for (var t = 0; t < goals.Length; t++)
        {
            if (!goals[t] || !possible[t])
            {
                continue;
            }

            foreach (var gap in FormSteps.Gaps)
            {
                var now = IsDirect(graph.Steps, graph.Forms[f], gap, t);
                var postures = PostureSet.Of([.. Open.Where(p => graph.Steps.OnPosture(graph.Forms[f], gap, t, p).Any())]);
                for (var k = isSetback[t] ? 1 : 0; k < 2; k++)
                {
                    direct[k, f] = now ? 1 : direct[k, f];
                    onPosture[k, f] = new PostureSet(onPosture[k, f].Bits | postures.Bits);
                }
            }
        }
    }

    private static bool IsDirect(FormSteps steps, HeroForm form, int gap, int t)
    {
        var technique = steps.Book.Techniques[t];
        if (technique.HasNoTarget)
        {
            return steps.Works(form, gap, technique);
        }

        return steps.OnPosture(form, gap, t, Posture.Ready).Any()
            || steps.Book.Attacks.Any(a => technique.Answers.Contains(a.Line) && steps.Answers(form, gap, technique, a) is not null)
            || Enumerable.Range(0, HeroForm.MostTies).Any(who => form[who].IsThere && steps.OnTied(form, gap, t, who).Any());
    }

    /// <summary>Moves of the way that begins with this one.</summary>
    private int Over(FormGraph.Way way, int setbacks)
    {
        var left = setbacks - (isSetback[way.Technique] ? 1 : 0);
        if (left < 0)
        {
            return Never;
        }

        if (way.Leaves != Posture.Ready && onPosture[Index(left), way.To].Contains(way.Leaves))
        {
            return 2;
        }

        return fewest[left, way.To] is var rest && rest == Never ? Never : rest + 1;
    }

    private void Relax()
    {
        for (var changed = true; changed;)
        {
            changed = false;
            for (var f = 0; f < graph.Forms.Count; f++)
            {
                foreach (var way in graph.From(f))
                {
                    for (var k = 0; possible[way.Technique] && k <= MostSetbacks; k++)
                    {
                        if (Over(way, k) is var moves && moves < fewest[k, f])
                        {
                            fewest[k, f] = moves;
                            changed = true;
                        }
                    }
                }
            }
        }
    }
}
