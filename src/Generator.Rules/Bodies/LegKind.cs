namespace Generator.Rules.Bodies;

/// <summary>How somebody is on the floor for a stretch of time.</summary>
public enum LegKind
{
    /// <summary>Upright at one place: ready, recovering, kneeling, held or holding.</summary>
    Rests,

    /// <summary>Comes onto the floor, to the place where they open.</summary>
    Enters,

    /// <summary>Walks round the clock or comes in.</summary>
    Comes,

    /// <summary>Walked along, or turned with, by the hero.</summary>
    Led,

    /// <summary>Gives way by less than a step, turns on the spot, or goes down to the knee.</summary>
    Shifts,

    /// <summary>Is sent by a technique that both do together, so that both know the way.</summary>
    Guided,

    /// <summary>Staggers, stumbles or falls.</summary>
    Sent,

    /// <summary>Lies on the floor: the leg's line is the body's, from the feet to the head.</summary>
    Lies,
}
