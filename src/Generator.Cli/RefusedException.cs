namespace Generator.Cli;

/// <summary>Something that the user gave is wrong; the message is written for them, the last line begins "Maybe".</summary>
public sealed class RefusedException : Exception
{
    public RefusedException()
    {
    }

    public RefusedException(string message)
        : base(message)
    {
    }

    public RefusedException(string message, Exception inner)
        : base(message, inner)
    {
    }

    /// <summary>The house form: what is wrong, then what to try.</summary>
    public RefusedException(string wrong, string maybe)
        : base($"{wrong}\n  {maybe}")
    {
    }

    /// <summary>What the program returns.</summary>
    public int Code { get; init; } = ExitCode.Input;
}
