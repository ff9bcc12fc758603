using System.Collections.Concurrent;
using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Connecting;
using Generator.Rules.Replaying;
using Generator.Solver.Repertoires;

namespace Generator.Solver.Constructing;

/// <summary>
/// The way to a hero moment whose first move works only from the floor, from one leg, in a grip or with somebody held: how far it is, and which moves
/// lead there. Where it works on nobody but a certain attacker who is held or grips, the way is theirs alone.
/// </summary>
internal sealed class Approach
{
    private readonly Scene scene;
    private readonly Repertoire repertoire;
    private readonly FormRoutes routes;
    private readonly ConcurrentDictionary<(HeroForm Form, int Setbacks), Menu[]> menus = new();
    private readonly int attacker;

    /// <summary>Whom the hero must be tied to; −1 when the techniques need no tie, or anybody's does.</summary>
    private readonly int partner;

    private Approach(Scene scene, Repertoire repertoire, bool[] techniques, int attacker)
    {
        (this.scene, this.repertoire, this.attacker) = (scene, repertoire, attacker);
        routes = new FormRoutes(FormGraph.Of(scene.Book), techniques, repertoire.Doable);
        partner = scene.Book.Techniques.Where((_, t) => techniques[t]).All(NeedsTie) ? attacker : -1;
    }

    /// <summary>The way to any of these techniques; null when the hero can go over to one of them from standing free.</summary>
    /// <param name="scene">The brief.</param>
    /// <param name="repertoire">What can be done.</param>
    /// <param name="techniques">The techniques, one flag each.</param>
    /// <param name="attacker">On whom; −1 for anybody.</param>
    public static Approach? To(Scene scene, Repertoire repertoire, bool[] techniques, int attacker) =>
        FormRoutes.AreNear(scene.Book, techniques) ? null : new Approach(scene, repertoire, techniques, attacker);

    /// <summary>Moves before one of the techniques can be tried; <see cref="FormRoutes.Never"/> when there is no way with the setbacks that are left.</summary>
    public int MovesBefore(FightState state, int setbacksLeft)
    {
        var isTiedToOther = IsTiedToOther(state);
        var form = FormOf(state, isTiedToOther);
        for (var a = 0; a < scene.Cast; a++)
        {
            if ((attacker < 0 || a == attacker) && state.Attackers[a] is { IsActive: true } target && target.PostureAt(state.Time) is { } posture && routes.WorksOn(form, posture, setbacksLeft))
            {
                return 0;
            }
        }

        var moves = routes.From(form, setbacksLeft);
        return moves == FormRoutes.Never ? FormRoutes.Never : moves - 1 + (isTiedToOther ? 1 : 0);
    }

    /// <summary>For each attacker the choices that lead closer.</summary>
    public Menu[] Leads(FightState state, int setbacksLeft)
    {
        var setbacks = Math.Min(setbacksLeft, FormRoutes.MostSetbacks);
        return menus.GetOrAdd((FormOf(state, IsTiedToOther(state)), setbacks), key => MenusFor(key.Form, key.Setbacks));
    }

    private Menu[] MenusFor(HeroForm form, int setbacks)
    {
        var first = routes.FirstMoves(form, setbacks).ToLookup(m => m.Technique, m => m.Reaction);
        return [.. repertoire.Menus.Select((menu, a) => menu.Only(choice => partner < 0 || a == partner ? Leading(choice, first) : null))];
    }

    private static Choice? Leading(Choice choice, ILookup<int, int> first)
    {
        int[] reactions = [.. choice.Reactions.Intersect(first[choice.Technique])];
        return reactions.Length == 0 ? null : choice with { Reactions = reactions };
    }

    /// <summary>Works only on somebody who is held or grips the hero.</summary>
    private static bool NeedsTie(Technique technique) => technique.Answers.IsEmpty && !technique.Needs.IsEmpty && technique.Needs.Members.All(p => p.IsTied());

    /// <summary>The hero is tied, but not to the one it is about: that has to end first.</summary>
    private bool IsTiedToOther(FightState state)
    {
        if (partner < 0 || state.Attackers[partner].Posture.IsTied())
        {
            return false;
        }

        for (var a = 0; a < scene.Cast; a++)
        {
            if (state.Attackers[a].Posture.IsTied())
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>The hero's form; whoever else is held does not bring the moment any nearer.</summary>
    private static HeroForm FormOf(FightState state, bool isTiedToOther) => isTiedToOther ? HeroForm.FreeIn(state.Stance) : HeroForm.Of(state);
}
