namespace Generator.Cli.Guarding;

/// <summary>Why there is no orderly end.</summary>
internal enum BreakdownKind
{
    /// <summary>The worker's process ended of itself, or somebody else ended it.</summary>
    Died,

    /// <summary>It took more memory than it may.</summary>
    Memory,

    /// <summary>It had not ended long after its time.</summary>
    Hung,

    /// <summary>The user wanted it to end at once.</summary>
    Ended,

    /// <summary>The worker itself has said what was wrong.</summary>
    Told,
}
