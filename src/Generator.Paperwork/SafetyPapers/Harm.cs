namespace Generator.Paperwork.SafetyPapers;

/// <summary>The harm that a hazard might do, from least to worst.</summary>
public enum Harm
{
    /// <summary>A bruise; goes on working.</summary>
    Minor,

    /// <summary>A sprain or cut; misses a day or two.</summary>
    Moderate,

    /// <summary>A broken bone, a joint out, a concussion.</summary>
    Serious,

    /// <summary>Head, neck or spine: lasting harm or worse.</summary>
    Grave,
}
