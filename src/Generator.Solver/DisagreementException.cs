namespace Generator.Solver;

/// <summary>Solver and audit disagree about a routine: a fault in the program, never in the brief.</summary>
public sealed class DisagreementException : Exception
{
    public DisagreementException()
    {
    }

    public DisagreementException(string message)
        : base(message)
    {
    }

    public DisagreementException(string message, Exception inner)
        : base(message, inner)
    {
    }
}
