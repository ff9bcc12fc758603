using Generator.Domain;

namespace Generator.Rules.Connecting;

/// <summary>
/// From which forms a chain of moves can be done whose links say what each may be: whether a way is left, not which. Distances, bearings, counts and what becomes
/// of those who are not tied are left out, so that it rules out only what no floor allows. For a trained hero.
/// </summary>
public sealed class FormChain
{
    private readonly FormGraph graph;
    private readonly bool[][] live;

    /// <param name="graph">The forms of the library.</param>
    /// <param name="links">The moves in order; null where anything or nothing may come.</param>
    public FormChain(FormGraph graph, IReadOnlyList<FormLink?> links)
    {
        this.graph = graph;
        live = new bool[links.Count + 1][];
        live[^1] = [.. Enumerable.Repeat(true, graph.Forms.Count)];
        for (var i = links.Count - 1; i >= 0; i--)
        {
            live[i] = links[i] is { } link ? Before(link, live[i + 1]) : live[^1];

            // From nowhere: this link or one behind it must give, which is no reason to rule out what comes before.
            live[i] = Array.Exists(live[i], l => l) ? live[i] : live[^1];
        }
    }

    /// <summary>The moves from a link on can be done from a form, as far as forms tell.</summary>
    public bool Leads(HeroForm form, int link) => graph.NumberOf(form) is var number && (number < 0 || live[link][number]);

    /// <summary>There are forms from which the moves from a link on cannot be done.</summary>
    public bool IsTight(int link) => Array.Exists(live[link], l => !l);

    /// <summary>The moves out of a form after which those from a link on can be done; null where the graph does not know the form.</summary>
    public IReadOnlySet<(int Technique, int Reaction)>? Leading(HeroForm form, int link) => graph.NumberOf(form) is >= 0 and var number
        ? graph.From(number).Concat(graph.Beyond(number)).Where(w => Goes(w, live[link])).Select(w => (w.Technique, w.Reaction)).ToHashSet() : null;

    private bool[] Before(FormLink link, bool[] after)
    {
        var own = Closed(link.May, after);
        if (link.MayBefore is not { } first)
        {
            return own;
        }

        var two = Closed(first, own);
        return [.. own.Select((o, f) => o || two[f])];
    }

    private bool[] Closed(Func<int, int, bool> may, bool[] after)
    {
        var found = new bool[after.Length];
        for (var f = 0; f < found.Length; f++)
        {
            foreach (var way in graph.From(f))
            {
                if (after[way.To] && may(way.Technique, way.Reaction))
                {
                    found[f] = true;
                    break;
                }
            }

            found[f] = found[f] || graph.Beyond(f).Any(w => may(w.Technique, w.Reaction));
        }

        return found;
    }

    private static bool Goes(FormGraph.Way way, bool[] after) => way.To < 0 || after[way.To];
}
