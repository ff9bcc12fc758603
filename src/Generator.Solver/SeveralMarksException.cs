using Generator.Domain;

namespace Generator.Solver;

/// <summary>A question that is not answered yet where the hero travels between several marks.</summary>
public sealed class SeveralMarksException : Exception
{
    public SeveralMarksException()
    {
    }

    /// <param name="message">What is wrong, a line break and what to try.</param>
    public SeveralMarksException(string message)
        : base(message)
    {
    }

    public SeveralMarksException(string message, Exception inner)
        : base(message, inner)
    {
    }

    /// <summary>Refuses a brief with several marks.</summary>
    /// <param name="brief">The brief.</param>
    /// <param name="what">What is asked for: "Repairing".</param>
    public static void Refuse(Brief brief, string what)
    {
        if (brief.Travels)
        {
            throw new SeveralMarksException($"{what} is not possible yet where the hero travels: the brief names {brief.Marks.Count} marks.\n  Maybe write the moves by hand, each travel move with its \"to\", and audit them; or ask for the part on one mark alone, without \"marks\".");
        }
    }
}
