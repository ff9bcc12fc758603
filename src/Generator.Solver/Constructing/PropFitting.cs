using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Replaying;

namespace Generator.Solver.Constructing;

/// <summary>Sifts what the hands of a moment cannot do for want of a prop, or since they hold one: a little less than the rule forbids, and soon told.</summary>
internal sealed class PropFitting(Scene scene)
{
    private readonly bool any = scene.Props.Any;

    /// <summary>Nothing of the hands stands against it.</summary>
    /// <param name="state">What is true before.</param>
    /// <param name="attacker">The target; −1 for none.</param>
    /// <param name="technique">What the hero does.</param>
    /// <param name="attack">What the attacker throws; null for nothing.</param>
    public bool Fits(FightState state, int attacker, Technique technique, Attack? attack) =>
        !any || (Has(state, technique.Prop, -1, attacker) && (attack is null || Has(state, attack.Prop, attacker, attacker)) && Free(state, -1, technique.Demands, technique.Prop) && (attack is null || Free(state, attacker, attack.Demands, attack.Prop)));

    private bool Has(FightState state, PropNeed? need, int user, int attacker)
    {
        if (need is null)
        {
            return true;
        }

        var holder = need.Holder switch { PropHolder.Hero => -1, PropHolder.Attacker => attacker, _ => PropState.NoOne };
        for (var p = 0; p < state.Props.Count; p++)
        {
            var prop = state.Props[p];
            if (prop.Holder == holder && !prop.Broken && (need.Hand is null || need.Hand == prop.Hand) && scene.Props.Serves(p, need) && !(need.Then == PropFate.Takes && IsFull(state, user, need.Into!.Value)))
            {
                return true;
            }
        }

        return false;
    }

    private static bool IsFull(FightState state, int who, PropHand into) =>
        (into.Has(Side.Left) && state.PropIn(who, Side.Left) >= 0) || (into.Has(Side.Right) && state.PropIn(who, Side.Right) >= 0);

    /// <summary>Hands that hold something do not work, unless the record is done with a prop of the same holder.</summary>
    private static bool Free(FightState state, int who, IReadOnlyList<string> demands, PropNeed? need)
    {
        if (need is not null && need.Holder == (who < 0 ? PropHolder.Hero : PropHolder.Attacker))
        {
            return true;
        }

        return !(state.PropIn(who, Side.Left) >= 0 && demands.Contains(Demand.LeftHand, StringComparer.Ordinal))
            && !(state.PropIn(who, Side.Right) >= 0 && demands.Contains(Demand.RightHand, StringComparer.Ordinal));
    }
}
