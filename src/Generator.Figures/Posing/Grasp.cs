using Generator.Domain;

namespace Generator.Figures.Posing;

/// <summary>Who holds what in the picture of a record: where no fight says it: the first kind that serves, in the hand that the record says.</summary>
internal static class Grasp
{
    /// <summary>Up to the contact, and afterwards.</summary>
    public static (IReadOnlyList<Holding> Held, IReadOnlyList<Holding> Left) Of(PropTable kinds, Technique technique, Attack? attack, Reaction? reaction)
    {
        List<Holding> held = [.. Of(kinds, attack?.Prop)];
        if (technique.Prop is { Holder: not PropHolder.Floor } need && (need.Holder == PropHolder.Hero || held.Count == 0) && Usual(kinds, need) is { } one)
        {
            held.Add(one);
        }

        List<Holding> left = [.. held.Select(h => Fate(h, technique.Prop, attack, reaction)).OfType<Holding>()];
        if (technique.Prop is { Holder: PropHolder.Floor } lies && Usual(kinds, lies) is { } taken)
        {
            left.Add(taken with { ByHero = true });
        }

        return (held, left);
    }

    /// <summary>Who holds it afterwards; null for nobody.</summary>
    private static Holding? Fate(Holding one, PropNeed? done, Attack? attack, Reaction? reaction)
    {
        if (done is not null && done.Holder == (one.ByHero ? PropHolder.Hero : PropHolder.Attacker))
        {
            if (done.Then is PropFate.Takes or PropFate.Passes)
            {
                return one with { Hand = done.Into ?? one.Hand, ByHero = true };
            }

            if (done.Then != PropFate.Keeps)
            {
                return null;
            }
        }

        return !one.ByHero && (attack?.Prop?.Then == PropFate.Throws || reaction?.Prop?.Then == PropFate.Drops || reaction?.Fall is not (null or FallClass.None or FallClass.ToKnee)) ? null : one;
    }

    /// <summary>What an attack or a reaction is done with.</summary>
    public static IReadOnlyList<Holding> Of(PropTable kinds, PropNeed? need) => need is not null && Usual(kinds, need) is { } one ? [one] : [];

    private static Holding? Usual(PropTable kinds, PropNeed need)
    {
        var hand = need.Hand ?? need.Into;
        var kind = kinds.Kinds.FirstOrDefault(k => k.Uses.Contains(need.Use) && (hand is null || hand == PropHand.Both == (k.Hands == 2)));
        return kind is null ? null : new Holding(kind, hand ?? (kind.Hands == 2 ? PropHand.Both : PropHand.Right), need.Holder == PropHolder.Hero);
    }
}
