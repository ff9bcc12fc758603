namespace Generator.Domain.Sketches;

/// <summary>How much a writer wants what a cell says.</summary>
public enum Firmness
{
    /// <summary>A <c>?</c> behind it: gives before anything else.</summary>
    Wish,

    /// <summary>Written and no more: gives where no routine can have it.</summary>
    Said,

    /// <summary>A <c>!</c> behind it: must not give.</summary>
    Fixed,
}
