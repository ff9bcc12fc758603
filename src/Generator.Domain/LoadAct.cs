namespace Generator.Domain;

/// <summary>
/// What a part of the body is asked to do. Standing on both feet, ordinary steps, and turning with steps between two moves count as nothing.
/// Common practice, no source.
/// </summary>
public enum LoadAct
{
    /// <summary>Carries the weight alone or nearly: the standing leg of a kick, the leg of a stagger, hands that hold the body up.</summary>
    Carry,

    /// <summary>Turns on it under weight.</summary>
    Pivot,

    /// <summary>Pushes off the floor with it.</summary>
    Jump,

    /// <summary>Comes down on it: a foot after a jump or a kick, the back or a shoulder in a fall.</summary>
    Land,

    /// <summary>Is on the floor under weight as a knee.</summary>
    Kneel,

    /// <summary>Bends deep under weight.</summary>
    Bend,

    /// <summary>Is swung, struck, stretched or twisted: the limb that kicks or punches, the back in a wide swing, the neck that sells a hit.</summary>
    Work,

    /// <summary>Takes force from a contact, a grip, a pull, a lever or somebody's weight.</summary>
    Strain,
}
