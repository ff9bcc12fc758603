using Generator.Domain;
using Generator.Figures.Bodies;
using Generator.Figures.Poses;

namespace Generator.Figures.Posing;

/// <summary>
/// Works out the instants of a reaction: of an attacker alone or, where the shape says what the hero does, of both. What the hero does comes first then, as it is what is
/// answered. What the attacker holds for it is in the hand, and gone where the reaction lets go of it.
/// </summary>
internal sealed class ReactionCard(PoseBook poses, (double Hero, double Attacker) statures, Reaction reaction, Shape shape, PropTable props)
{
    /// <summary>From mark to mark where the shape says nothing; share of stature.</summary>
    private const double UsualDistance = 0.6;

    /// <summary>By which somebody is put farther off until two bodies do not go through one another; metres.</summary>
    private const double Nearer = 0.02;

    private readonly Pose guard = poses.Poses[poses.Postures[Posture.Ready]];

    private readonly IReadOnlyList<Holding> held = Grasp.Of(props, reaction.Prop);

    public Card Card => shape.Contact.Other is null ? Alone : Both;

    private Card Alone
    {
        get
        {
            var falls = shape.Start is not null || shape.End is not null;
            var middle = Named(shape.Contact.Pose, guard);
            return Of(
                Single(falls ? "first" : "before", Named(shape.Start?.Pose, guard)),
                Bumped(Single(falls ? "then" : "sell", middle)),
                Bumped(Single(falls ? "at the end" : "sell", Named(shape.End?.Pose, middle))));
        }
    }

    private Card Both
    {
        get
        {
            var sell = Pair("sell", shape.Contact);
            return Of(
                Pair("before", shape.Start ?? shape.Contact with { Pose = null, Other = null, Aims = [], OtherAims = [] }), sell, shape.End is null ? sell : Pair("at the end", shape.End));
        }
    }

    private Card Of(Frame start, Frame contact, Frame end) =>
        new(reaction.Id, reaction.Name, shape.Side, Arming.Of(start, held, [], []), Left(contact), Left(end), ShowsStart: true) { ByAttacker = true, Round = shape.View };

    private Frame Left(Frame frame) => reaction.Prop is { Then: not PropFate.Keeps } ? frame : Arming.Of(frame, held, [], []);

    private Frame Single(string when, Pose pose) => new(when, null, Kinematics.Of(pose, statures.Attacker), 0);

    /// <summary>With whoever the attacker is sent into, as near behind as two bodies can be.</summary>
    private Frame Bumped(Frame frame)
    {
        if (!reaction.HitsSecond || frame.Attacker is not { } first)
        {
            return frame;
        }

        var second = Kinematics.Of(poses.Poses[poses.Postures[Posture.OffBalance]], statures.Attacker).Moved(new Vec(0, 0, first[Joint.Hips].Z));
        while (Clearing.Depth(first, second) > 0)
        {
            second = second.Moved(new Vec(0, 0, -Nearer));
        }

        return frame with { Second = second };
    }

    private Frame Pair(string when, Instant instant)
    {
        var told = instant with
        {
            Turn = instant.OtherTurn ?? 0,
            OtherTurn = instant.Turn ?? 0,
            Distance = instant.Distance ?? shape.Contact.Distance ?? UsualDistance,
            Aims = instant.OtherAims,
            OtherAims = instant.Aims,
        };
        var pair = Staging.Of(Named(instant.Other, poses.Poses[poses.Stances[Stance.LeftLead]]), Named(instant.Pose, guard), told, statures);
        return new Frame(when, pair.Doer, pair.Other, pair.Missing) { Marks = pair.Marks };
    }

    private Pose Named(string? name, Pose otherwise) => name is null ? otherwise : poses.Poses[name];
}
