namespace Generator.Cli;

/// <summary>What the program prints cannot be taken in; the message is written for the user.</summary>
public sealed class OutputException : Exception
{
    public OutputException()
    {
    }

    public OutputException(string message)
        : base(message)
    {
    }

    public OutputException(string message, Exception inner)
        : base(message, inner)
    {
    }
}
