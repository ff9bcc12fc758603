namespace Generator.Paperwork.Printing;

/// <summary>A page was not printed; the message says why.</summary>
public sealed class PrintException : Exception
{
    public PrintException()
    {
    }

    public PrintException(string message)
        : base(message)
    {
    }

    public PrintException(string message, Exception inner)
        : base(message, inner)
    {
    }
}
