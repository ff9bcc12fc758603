using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Replaying;

namespace Generator.Solver.Constructing;

/// <summary>
/// Whether the prop with which a hero moment is done is still where it must be, and whether the hero's hands are empty where it needs them: what has been dropped, taken or broken on the way is seldom there again.
/// Looked at over several marks alone, as <see cref="AtThing"/> is.
/// </summary>
internal sealed class PropAim
{
    /// <summary>Half counts before the moment is due at which the hands begin to matter.</summary>
    private const double Foresight = 24;

    /// <summary>What it costs in points that nobody who should holds it, and that a hand is full.</summary>
    private const double Elsewhere = 4, Full = 1.5;

    private readonly Scene scene;
    private readonly Technique[] techniques;
    private readonly int attacker;

    private PropAim(Scene scene, Technique[] techniques, int attacker) => (this.scene, this.techniques, this.attacker) = (scene, techniques, attacker);

    /// <summary>Null where no prop of the brief can help or hinder the moment.</summary>
    /// <param name="scene">The brief.</param>
    /// <param name="step">The first move of the moment.</param>
    public static PropAim? For(Scene scene, MomentStep step)
    {
        var any = scene.Book.Techniques.Where((_, t) => step.Techniques[t]).ToArray();
        return scene.Marks.Count == 1 || !scene.Props.Any || any.Length == 0 || Array.Exists(any, t => t.Prop is null && !WantsHand(t, Side.Left) && !WantsHand(t, Side.Right))
            ? null
            : new PropAim(scene, any, step.Attacker);
    }

    /// <summary>Nothing with which it could be done is whole any more.</summary>
    public bool IsLost(FightState state) => Array.TrueForAll(techniques, t => t.Prop is { } need && !scene.Props.Serving(need).Any(p => !state.Props[p].Broken));

    /// <summary>In points; 0 where prop and hands are as they must be.</summary>
    public double Owed(FightState state, double due) => techniques.Min(t => Owed(state, t, state.Time + Foresight >= due));

    private double Owed(FightState state, Technique technique, bool isSoon)
    {
        if (technique.Prop is not { } need)
        {
            return isSoon && ((WantsHand(technique, Side.Left) && state.PropIn(-1, Side.Left) >= 0) || (WantsHand(technique, Side.Right) && state.PropIn(-1, Side.Right) >= 0)) ? Full : 0;
        }

        // The hero can take up what lies about when the time comes; an attacker who has lost it mostly cannot.
        return (need.Holder == PropHolder.Attacker || isSoon) && !scene.Props.Serving(need).Any(p => IsThere(state.Props[p], need)) ? Elsewhere : 0;
    }

    private bool IsThere(PropState prop, PropNeed need) => need.Holder switch
    {
        PropHolder.Hero => prop.Holder == -1,
        PropHolder.Attacker => attacker < 0 ? prop.Holder >= 0 : prop.Holder == attacker,
        _ => prop.Lies,
    };

    private static bool WantsHand(Technique technique, Side hand) => technique.Demands.Contains(hand == Side.Left ? Demand.LeftHand : Demand.RightHand, StringComparer.Ordinal);
}
