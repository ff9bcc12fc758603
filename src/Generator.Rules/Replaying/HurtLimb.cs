using Generator.Domain;

namespace Generator.Rules.Replaying;

/// <summary>Somebody plays a hurt part of the body.</summary>
/// <param name="Who">Number of the attacker; −1 for the hero, or for the ally in a fight as the ally is in it.</param>
/// <param name="What">The part, and the count until which it is hurt.</param>
/// <param name="From">Moment from which: the end of the move that hurt it.</param>
/// <param name="Move">Number of that move, from 0.</param>
public sealed record HurtLimb(int Who, Hurt What, int From, int Move)
{
    /// <summary>Nobody is hurt.</summary>
    public static readonly FixedList<HurtLimb> None = [];

    /// <summary>A move that starts at this moment must spare it.</summary>
    public bool IsSparedAt(int moment) => moment < What.Until.Value;

    /// <summary>What hurts after a move: what did and is not over by its end, and what the move has hurt.</summary>
    internal static FixedList<HurtLimb> After(Scene scene, Step step)
    {
        var was = step.Before.Hurts;
        return was.Count == 0 && step.Row.Hurt is null ? was : Changed(scene, step, was);
    }

    private static FixedList<HurtLimb> Changed(Scene scene, Step step, FixedList<HurtLimb> was)
    {
        var now = was.Where(h => h.IsSparedAt(step.End));
        return step.Row.Hurt is { } hurt && hurt.By(step.Row, scene.Book) is { } who && hurt.What.Until.Value > step.End
            ? [.. now, new HurtLimb(who, hurt.What, step.End, step.Index)]
            : [.. now];
    }
}
