namespace Generator.Cli;

/// <summary>What the program returns to whoever started it.</summary>
public static class ExitCode
{
    public const int Good = 0;

    /// <summary>The audit found something unsafe or broken.</summary>
    public const int Forbidden = 1;

    /// <summary>What was given is wrong: a command, an option, or a file.</summary>
    public const int Input = 2;

    /// <summary>No routine can satisfy the brief.</summary>
    public const int Impossible = 3;

    /// <summary>Time ran out, or the search was stopped, before there was a routine.</summary>
    public const int OutOfTime = 4;

    /// <summary>A fault of the program itself.</summary>
    public const int Fault = 70;
}
