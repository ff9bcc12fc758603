using Generator.Solver.Constructing;

namespace Generator.Solver.Completing;

/// <summary>Travel moves as what fills a move, or leads up to one.</summary>
internal sealed partial class MoveFilling
{
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
