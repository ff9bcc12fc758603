using Generator.Domain;
using Generator.Figures.Bodies;
using Generator.Figures.Poses;

namespace Generator.Figures.Posing;

/// <summary>Puts props into hands. What a move is done with points at what it is aimed at, and whoever does it stands farther off by its length; anything else is carried as the arm has it.</summary>
internal static class Arming
{
    /// <summary>Degrees between a forearm and what its fist holds (common practice, no source).</summary>
    private const double Grip = 60;

    /// <summary>From the hand in front to the other one on a long thing; metres (common practice, no source).</summary>
    private const double Hands = 0.30;

    /// <summary>Least height of a far end; metres.</summary>
    private const double OverFloor = 0.03;

    private static readonly (double Sin, double Cos) Gripped = Math.SinCos(Grip * Math.PI / 180);

    /// <summary>What is held of which a record is done, where it makes whoever does it reach farther; null for none.</summary>
    public static Holding? Of(PropNeed? need, bool byHero, IReadOnlyList<Holding> held) =>
        need is { Reaches: true } ? held.FirstOrDefault(h => h.ByHero == byHero && h.Serves(need)) : null;

    /// <summary>The same aims for the far end of what is held instead of the hand.</summary>
    public static IReadOnlyList<Aim> Aims(IReadOnlyList<Aim> aims, Holding? with) => with is null
        ? aims
        : [.. aims.Select(a => a.Gap is not null && a.Part == (with.Front == Side.Left ? Part.LeftHand : Part.RightHand) ? a with { Longer = with.Length } : a)];

    /// <summary>The frame with everything in its hand.</summary>
    /// <param name="frame">Both bodies.</param>
    /// <param name="held">Who holds what.</param>
    /// <param name="heroAims">Aims of the hero; only those of something in the hand count.</param>
    /// <param name="otherAims">Of the attacker.</param>
    /// <param name="thrown">What is in the air, at whom it was thrown.</param>
    /// <param name="stood">The hero as they stood when the attacker aimed; null where they stand so still.</param>
    public static Frame Of(Frame frame, IReadOnlyList<Holding> held, IReadOnlyList<Aim> heroAims, IReadOnlyList<Aim> otherAims, PropNeed? thrown = null, Figure? stood = null)
    {
        var props = new List<HeldProp>();
        foreach (var holding in held)
        {
            var (body, other) = holding.ByHero ? (frame.Hero, frame.Attacker) : (frame.Attacker, frame.Hero);
            if (body is null)
            {
                continue;
            }

            var hand = body[Skeleton.Arm(holding.Front).Tip];
            if (other is not null && thrown is not null && thrown.Holder == (holding.ByHero ? PropHolder.Hero : PropHolder.Attacker) && holding.Serves(thrown))
            {
                var at = Aiming.Middle(other, thrown.Use == PropUse.Wrap ? Target.Head : Target.Belly).Middle;
                props.Add(new HeldProp(holding.Kind, at - ((at - hand).Unit * holding.Length), at));
                continue;
            }

            var aims = holding.ByHero ? heroAims : otherAims;
            var aimed = other is null ? default : aims.FirstOrDefault(a => a.Longer > 0 && a.Side == holding.Front);
            var way = aimed.Longer > 0 ? (Aiming.Middle(holding.ByHero ? other! : stood ?? other!, aimed.At).Middle - hand).Unit : Carried(body, holding);
            if (holding.Hand == PropHand.Both)
            {
                (body, _) = Reaching.Hand(body, holding.Front.Other(), hand - (way * Hands));
                frame = holding.ByHero ? frame with { Hero = body } : frame with { Attacker = body };
            }

            props.Add(new HeldProp(holding.Kind, hand, hand + (way * holding.Length)));
        }

        return props.Count == 0 ? frame : frame with { Props = props };
    }

    /// <summary>The way in which it points when nothing is done with it: on the side of the thumb, towards which an elbow bends.</summary>
    internal static Vec Carried(Figure body, Holding holding)
    {
        var (shoulder, elbow, wrist, tip) = Skeleton.Arm(holding.Front);
        var fore = (body[wrist] - body[elbow]).Unit;
        var bends = (body[shoulder] - body[elbow]).Unit.Beside(fore);
        var thumb = (bends + ((body.ChestTurned.Ahead + Vec.Up).Beside(fore) * 0.3)).Beside(fore).Unit;
        var way = holding.Kind.Hangs ? Vec.Up * -1 : (fore * Gripped.Cos) + (thumb * Gripped.Sin);
        var least = Math.Clamp((OverFloor - body[tip].Y) / holding.Length, -1, 1);
        if (way.Y >= least)
        {
            return way;
        }

        var level = way.Level.Length > 1e-6 ? way.Level.Unit : body.HipsTurned.Ahead.Level.Unit;
        return (level * Math.Sqrt(1 - (least * least))) + (Vec.Up * least);
    }
}
