using System.Collections.Concurrent;
using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Connecting;
using Generator.Rules.Replaying;

namespace Generator.Solver.Constructing;

/// <summary>The way to a hero moment whose first move works only from the floor, from one leg, in a grip or with somebody held: how far it is, and which moves lead there.</summary>
internal sealed class Approach
{
    private readonly Scene scene;
    private readonly Repertoire repertoire;
    private readonly FormRoutes routes;
    private readonly ConcurrentDictionary<(HeroForm Form, int Setbacks), Menu[]> menus = new();

    private Approach(Scene scene, Repertoire repertoire, FormRoutes routes) => (this.scene, this.repertoire, this.routes) = (scene, repertoire, routes);

    /// <summary>The way to any of these techniques, one flag each; null when the hero can go over to one of them from standing free.</summary>
    public static Approach? To(Scene scene, Repertoire repertoire, bool[] techniques) =>
        FormRoutes.AreNear(scene.Book, techniques) ? null : new Approach(scene, repertoire, new FormRoutes(FormGraph.Of(scene.Book), techniques, repertoire.Possible));

    /// <summary>Moves before one of the techniques can be tried; <see cref="FormRoutes.Never"/> when there is no way with the setbacks that are left.</summary>
    public int MovesBefore(FightState state, int setbacksLeft)
    {
        var form = FormOf(state);
        foreach (var attacker in state.Attackers)
        {
            if (attacker.IsActive && attacker.PostureAt(state.Time) is { } posture && routes.WorksOn(form, posture, setbacksLeft))
            {
                return 0;
            }
        }

        return routes.From(form, setbacksLeft) is var moves && moves == FormRoutes.Never ? FormRoutes.Never : moves - 1;
    }

    /// <summary>For each attacker the choices that lead closer.</summary>
    public Menu[] Leads(FightState state, int setbacksLeft)
    {
        var setbacks = Math.Min(setbacksLeft, FormRoutes.MostSetbacks);
        return menus.GetOrAdd((FormOf(state), setbacks), key => MenusFor(key.Form, key.Setbacks));
    }

    private Menu[] MenusFor(HeroForm form, int setbacks)
    {
        var first = routes.FirstMoves(form, setbacks).ToLookup(m => m.Technique, m => m.Reaction);
        return [.. repertoire.Menus.Select(menu => menu.Only(choice => Leading(choice, first)))];
    }

    private static Choice? Leading(Choice choice, ILookup<int, int> first)
    {
        int[] reactions = [.. choice.Reactions.Intersect(first[choice.Technique])];
        return reactions.Length == 0 ? null : choice with { Reactions = reactions };
    }

    private HeroForm FormOf(FightState state)
    {
        Span<Tie> ties = stackalloc Tie[scene.Cast];
        for (var a = 0; a < ties.Length; a++)
        {
            var attacker = state.Attackers[a];
            ties[a] = new Tie(attacker.Posture, attacker.Grip);
        }

        return HeroForm.Of(state.Stance, state.Left, state.Right, state.Bound, state.BoundBy, ties);
    }
}
