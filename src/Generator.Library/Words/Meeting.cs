using Generator.Domain;

namespace Generator.Library.Words;

/// <summary>Whether attack and technique of one line of notes go together.</summary>
internal static class Meeting
{
    /// <summary>The technique answers the attack, or can be done to somebody who has taken hold with it.</summary>
    public static bool Suits(Technique technique, Attack attack) =>
        technique.Meets(attack) || (attack.Line.IsGrab && technique.Needs.Contains(Posture.Gripping) && technique.Bounds.HasFlag(Holds(attack)));

    private static BoundSet Holds(Attack attack) => attack.GripsBound switch
    {
        Bound.Front => BoundSet.Front,
        Bound.Rear => BoundSet.Rear,
        _ => BoundSet.Free,
    };
}
