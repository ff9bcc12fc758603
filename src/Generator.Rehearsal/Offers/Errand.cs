namespace Generator.Rehearsal.Offers;

/// <summary>What the solver can be asked to do for the page.</summary>
public enum Errand
{
    /// <summary>Fill what is open.</summary>
    Fill,

    /// <summary>Other ways for some moves of a whole fight.</summary>
    OtherWays,

    /// <summary>The smallest change that leaves nothing unsafe or broken.</summary>
    Mend,

    /// <summary>Fit what was taught to another brief.</summary>
    Revise,

    /// <summary>Which findings vanish with which when those are mended.</summary>
    Causes,
}
