namespace Generator.Rehearsal.Documents;

/// <summary>Something that cannot be done as it was asked: what is wrong, and what may help.</summary>
public sealed class RefusedEditException(string message, string maybe) : Exception(message)
{
    /// <summary>A sentence beginning "Maybe".</summary>
    public string Maybe { get; } = maybe;

    /// <summary>It was asked of a state that is no longer the present one.</summary>
    public bool IsStale { get; init; }
}
