namespace Generator.Paperwork.SafetyPapers;

/// <summary>A change log that is there already cannot be read; the message says where and why.</summary>
public sealed class ChangeLogException : Exception
{
    public ChangeLogException()
    {
    }

    public ChangeLogException(string message)
        : base(message)
    {
    }

    public ChangeLogException(string message, Exception inner)
        : base(message, inner)
    {
    }
}
