namespace Generator.Domain;

/// <summary>What may be done with a thing on the floor.</summary>
public enum ThingUse
{
    /// <summary>Leant on.</summary>
    Lean,

    /// <summary>Sat on: as high as a seat.</summary>
    Sit,

    /// <summary>Pushed off from, with foot, back or hands.</summary>
    PushOff,

    /// <summary>Somebody is driven against it and sells it with the hands and a slap.</summary>
    Slam,

    /// <summary>Somebody is sent into it and comes back from it.</summary>
    Bounce,

    /// <summary>Somebody is bent over it.</summary>
    BendOver,

    /// <summary>Somebody stumbles over it or sits down into it.</summary>
    Trip,

    /// <summary>Somebody is thrown onto it.</summary>
    ThrownOnto,

    /// <summary>The hero gets behind it.</summary>
    Behind,

    /// <summary>Somebody is cornered against it.</summary>
    Corner,

    /// <summary>It is shoved or kicked in somebody's way.</summary>
    Block,

    /// <summary>Gone over, with a hand, a hip or the back on it.</summary>
    Vault,

    /// <summary>Stood on and come down from.</summary>
    Climb,
}
