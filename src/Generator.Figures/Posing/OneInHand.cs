using Generator.Domain;
using Generator.Figures.Bodies;
using Generator.Figures.Poses;

namespace Generator.Figures.Posing;

/// <summary>
/// Puts into the card of a move whoever else is in it without being its partner: the one whom the hero holds meanwhile, or who holds or binds the hero. In a fight they stand where the fight has them.
/// </summary>
internal static class OneInHand
{
    /// <summary>Behind the shoulder, so that neither hides the other; degrees from where the hero looks (common practice, no source).</summary>
    private const double Usual = 120;

    /// <summary>Whoever is no farther round than this is between the hero and the one who comes, and looks at that one.</summary>
    private const double InTheWay = 45;

    /// <summary>From mark to mark of holder and held; share of stature (common practice, no source).</summary>
    private const double Away = 0.42;

    /// <summary>From the chest of the hero to the mark of whoever binds them from there; share of stature (common practice, no source).</summary>
    private const double Binding = 0.3;

    /// <param name="card">The card, by itself.</param>
    /// <param name="technique">Its record.</param>
    /// <param name="poses">Poses and shapes.</param>
    /// <param name="stature">Of the one in hand; metres.</param>
    public static Card Into(Card card, Technique technique, PoseBook poses, double stature)
    {
        var (left, right) = (IsElse(technique.LeftNeed), IsElse(technique.RightNeed));
        var bound = IsBoundByElse(technique);
        if (technique.TakesTwo || !(left || right || bound) || poses.Of(technique) is not { } shape)
        {
            return card;
        }

        if (bound)
        {
            var rear = !technique.Bounds.HasFlag(BoundSet.Front);
            return card with { Start = Bound(card.Start, rear), Contact = Bound(card.Contact, rear), End = Bound(card.End, rear) };
        }

        var (side, held) = (left ? Side.Left : Side.Right, (left ? technique.LeftNeed : technique.RightNeed) == HandNeed.HoldingOther);
        return card with { Start = With(card.Start, shape.Start), Contact = With(card.Contact, shape.Contact), End = With(card.End, shape.End ?? shape.Contact) };

        Frame Bound(Frame frame, bool rear)
        {
            if (frame.Hero is not { } hero)
            {
                return frame;
            }

            var looks = hero.ChestTurned.Ahead.Level.Unit;
            var at = (Math.Atan2(looks.X, looks.Z) * 180 / Math.PI) + (rear ? 180 : 0);
            var other = Kinematics.Of(poses.Poses[poses.Postures[Posture.Gripping]], stature).TurnedLeft(180)
                .Moved(Vec.Ahead * (Binding * (hero.Stature + stature) / 2)).TurnedLeft(at).Moved(hero[Joint.Chest].Level);
            Aim[] grips = rear ? [new Aim(Part.LeftHand, Target.LeftShoulder, null), new Aim(Part.RightHand, Target.RightShoulder, null)]
                : [new Aim(Part.LeftHand, Target.RightShoulder, null), new Aim(Part.RightHand, Target.LeftShoulder, null)];
            other = Aiming.Limbs(other, hero, grips).Figure;
            return frame with { Second = other, Marks = [.. frame.Marks, .. Aiming.Marks(other, hero, grips)] };
        }

        Frame With(Frame frame, Instant? instant)
        {
            if (frame.Hero is not { } hero)
            {
                return frame;
            }

            var round = instant?.InHand ?? Usual;
            var looks = hero.ChestTurned.Ahead.Level.Unit;
            var at = (Math.Atan2(looks.X, looks.Z) * 180 / Math.PI) + (side == Side.Left ? round : -round);
            var pose = poses.Poses[poses.Postures[!held ? Posture.Gripping : round <= InTheWay ? Posture.HeldBody : Posture.HeldArm]];
            var other = Kinematics.Of(pose, stature).TurnedLeft(held && round <= InTheWay ? 0 : 180)
                .Moved(Vec.Ahead * (Away * (hero.Stature + stature) / 2)).TurnedLeft(at).Moved(hero[Joint.Hips].Level);
            var (hand, wrist) = side == Side.Left ? (Part.LeftHand, Target.LeftWrist) : (Part.RightHand, Target.RightWrist);
            if (held)
            {
                Aim[] takes = [new Aim(hand, Target.Nape, null)];
                hero = Aiming.Limbs(hero, other, takes).Figure;
                return frame with { Hero = hero, Second = other, Marks = [.. frame.Marks, .. Aiming.Marks(hero, other, takes)] };
            }

            Aim[] grips = [new Aim(Part.LeftHand, wrist, null), new Aim(Part.RightHand, wrist, null)];
            other = Aiming.Limbs(other, hero, grips).Figure;
            return frame with { Second = other, Marks = [.. frame.Marks, .. Aiming.Marks(other, hero, grips).Take(1)] };
        }
    }

    /// <summary>Only while somebody who is not its partner binds the hero, and bears them up.</summary>
    private static bool IsBoundByElse(Technique technique) => technique.Supported && technique.Bounds != BoundSet.None && !technique.Bounds.HasFlag(BoundSet.Free);

    private static bool IsElse(HandNeed need) => need is HandNeed.HoldingOther or HandNeed.HeldByOther;
}
