namespace Generator.Domain.Edits;

/// <summary>An edit that cannot be made: what is wrong, and what may help.</summary>
public sealed class EditException(string message, string maybe) : Exception(message)
{
    /// <summary>A sentence beginning "Maybe".</summary>
    public string Maybe { get; } = maybe;
}
