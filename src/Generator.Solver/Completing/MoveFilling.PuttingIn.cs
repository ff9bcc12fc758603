using Generator.Solver.Constructing;

namespace Generator.Solver.Completing;

/// <summary>Moves that are put in, and travel moves as what fills a move or leads up to one.</summary>
internal sealed partial class MoveFilling
{
    /// <summary>Moves put in before the next one, each at its price unless the sketch left a place for them: any; where feet, hands or grip do not suit what comes, those after which they do.</summary>
    public void PutIn(Beginning begun, bool isFree, SketchForms? forms, List<Beginning> filled)
    {
        leadPrice = isFree ? 0 : SketchPart.Added.Price();
        var before = filled.Count;
        if (forms?.MayGoOn(begun.Node.State, begun.Next) == false)
        {
            LeadUp(begun, forms, filled);
        }

        LeadOn(begun, filled);

        if (filled.Count > before)
        {
            return;
        }

        var children = new List<Node>();
        expander.Expand(begun.Node, children);
        foreach (var child in children.Where(c => marks.MayStand(begun.Node.State, c.Row, begun.Next)))
        {
            Keep(PutIn(begun, child), filled);
        }
    }

    private Beginning PutIn(Beginning begun, Node child) => new(begun, child, begun.Price + leadPrice) { Next = begun.Next, Shift = begun.Shift, IsPutIn = leadPrice > 0 };

    private void LeadUp(Beginning begun, SketchForms forms, List<Beginning> filled)
    {
        leads = true;
        gathering.Begin(forms, begun.Next);
        foreach (var a in Present(begun.Node))
        {
            gathering.Add(begun.Node.State, a, repertoire.Menus[a], 0);
        }

        if (MayBeAlone(begun.Node))
        {
            gathering.AddAlone(begun.Node.State, any.NoTargets(Giving.Nothing));
        }

        TryAll(begun, any, Giving.Little, filled);
        leads = false;
    }

    /// <summary>Adds what leads the hero on to other marks.</summary>
    private void Travels(Beginning begun, SketchStep step, IEnumerable<int> to, int giving)
    {
        var node = begun.Node;
        foreach (var menu in to.Select(t => step.Travels(node.State.Mark, t, giving)))
        {
            foreach (var a in Present(node).Where(a => step.Concerns(a, giving)))
            {
                gathering.Add(node.State, a, menu);
            }

            if (MayBeAlone(node))
            {
                gathering.AddAlone(node.State, menu.ByWill);
            }
        }
    }

    /// <summary>A travel move to the next mark, where one that is written leads farther.</summary>
    private void LeadOn(Beginning begun, List<Beginning> filled)
    {
        if (!marks.Before(begun.Node.State, begun.Next).Any())
        {
            return;
        }

        leads = true;
        gathering.Begin(null, begun.Next);
        Travels(begun, any, marks.Before(begun.Node.State, begun.Next), Giving.Nothing);
        TryAll(begun, any, Giving.Little, filled);
        leads = false;
    }
}
