namespace Generator.Domain;

/// <summary>What may be done with a prop in the hand.</summary>
public enum PropUse
{
    /// <summary>Swung: from above, or round at an arm or a flank.</summary>
    Swing,

    /// <summary>Thrust beside the line, at the belly or the hip.</summary>
    Thrust,

    /// <summary>Drawn past in a cut, out of line and short of the body.</summary>
    Slash,

    /// <summary>Held in the way of a blow.</summary>
    Cover,

    /// <summary>A limb or a neck is caught with its bend or its end.</summary>
    Hook,

    /// <summary>Somebody is kept off or pushed with it.</summary>
    Press,

    /// <summary>Thrown, low and short, or from hand to hand.</summary>
    Throw,

    /// <summary>Broken on a padded part of the body: of a break-away alone.</summary>
    Break,

    /// <summary>Thrown over somebody, or wound round an arm.</summary>
    Wrap,

    /// <summary>Carried, taken, passed on or let fall.</summary>
    Carry,
}
