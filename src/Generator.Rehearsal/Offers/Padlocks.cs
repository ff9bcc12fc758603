using Generator.Domain.Sketches;

namespace Generator.Rehearsal.Offers;

/// <summary>Padlocks stay on what they were put on: locked words never give, so each finds its move again, in order.</summary>
internal static class Padlocks
{
    public static Sketch Kept(Sketch before, Sketch after)
    {
        var moves = after.Moves.ToArray();
        var from = 0;
        foreach (var said in before.Moves.Where(m => m.IsLocked))
        {
            var at = Array.FindIndex(moves, from, m => Holds(said.Attack, m.Attack) && Holds(said.Technique, m.Technique) && Holds(said.Reaction, m.Reaction) && (said.Attacker is null || said.Attacker == m.Attacker));
            if (at >= 0)
            {
                moves[at] = moves[at] with { Attack = Locked(said.Attack, moves[at].Attack), Technique = Locked(said.Technique, moves[at].Technique), Reaction = Locked(said.Reaction, moves[at].Reaction) };
                from = at + 1;
            }
        }

        return after with { Moves = moves };
    }

    private static bool Holds(SketchCell? said, SketchCell? found) => said?.Firmness != Firmness.Fixed || (found is not null && said.Ids.Contains(found.Ids[0], StringComparer.Ordinal));

    private static SketchCell? Locked(SketchCell? said, SketchCell? found) => said?.Firmness == Firmness.Fixed ? found! with { Firmness = Firmness.Fixed } : found;
}
