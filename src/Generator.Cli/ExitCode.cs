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

    /// <summary>A fault of the program itself. This and higher codes are no orderly end.</summary>
    public const int Fault = 70;

    /// <summary>The process that did the work broke down, needed too much memory, or did not end.</summary>
    public const int BrokenDown = 71;

    /// <summary>What the program prints cannot be taken in: standard output is full or closed.</summary>
    public const int NoOutput = 72;

    /// <summary>The system does not give what the program needs to run at all: too few file handles, or the folder it was started in is gone.</summary>
    public const int Surroundings = 73;

    /// <summary>What commands that run under a guard say of it in their help.</summary>
    internal static readonly (int Code, string Meaning) BrokenDownHere = (BrokenDown, "The work broke down; the message says where the best routine so far is.");

    /// <summary>The user ended the program at once, by a second Ctrl-C.</summary>
    public const int Stopped = 130;
}
