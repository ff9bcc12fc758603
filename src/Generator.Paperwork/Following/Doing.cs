namespace Generator.Paperwork.Following;

/// <summary>What a performer does in one half count, as the tracks show it.</summary>
public enum Doing
{
    /// <summary>Has not set foot on the floor yet.</summary>
    NotIn,

    /// <summary>Walks onto the floor, to where they open.</summary>
    Enters,

    /// <summary>On their feet, free and not yet able to land an attack.</summary>
    Ready,

    /// <summary>Could land an attack, and does not.</summary>
    Waiting,

    /// <summary>On the way from where they stood to the hero, for an attack.</summary>
    ComesIn,

    /// <summary>From the start of the attack to its contact.</summary>
    Attack,

    /// <summary>Takes the technique and sells it, open to the next.</summary>
    Reaction,

    /// <summary>Goes down: the technique, and one count after it.</summary>
    Fall,

    /// <summary>Gets up, comes round, comes to: cannot be used yet.</summary>
    Reset,

    /// <summary>Held by the hero.</summary>
    Held,

    /// <summary>Holds the hero.</summary>
    Grips,

    /// <summary>Out of the fight.</summary>
    Out,

    /// <summary>The hero between two moves.</summary>
    Between,

    /// <summary>The hero blocks, parries, steps back.</summary>
    Defends,

    /// <summary>The hero hits: strikes and kicks.</summary>
    Hits,

    /// <summary>The hero throws, locks or gets free.</summary>
    Grapples,

    /// <summary>The hero puts somebody out.</summary>
    Finishes,

    /// <summary>The hero is hit, held or thrown.</summary>
    Setback,

    /// <summary>A beat of the story, or the hero gets up.</summary>
    Pauses,
}
