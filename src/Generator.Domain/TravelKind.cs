namespace Generator.Domain;

/// <summary>How the hero gets from one mark to another.</summary>
public enum TravelKind
{
    /// <summary>Goes, of their own accord.</summary>
    ByWill,

    /// <summary>Gives ground to somebody who presses.</summary>
    Driven,

    /// <summary>Is sent there by somebody who stays behind.</summary>
    Thrown,

    /// <summary>Is pulled along by a grip.</summary>
    Dragged,

    /// <summary>Is pushed or borne along by somebody who goes with them.</summary>
    CarriedAlong,

    /// <summary>Runs, and somebody runs after them.</summary>
    Chased,
}
