using Generator.Domain;

namespace Generator.Solver;

/// <summary>What is not done where the hero travels between several marks: drafting by CP-SAT alone.</summary>
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

    /// <summary>Refuses a brief with several marks to CP-SAT alone, whose models know one mark.</summary>
    /// <param name="brief">The brief.</param>
    /// <exception cref="SeveralMarksException">The hero travels.</exception>
    public static void Refuse(Brief brief)
    {
        if (brief.Travels)
        {
            throw new SeveralMarksException($"CP-SAT alone does not draft a fight in which the hero travels: the brief names {brief.Marks.Count} marks, and its models know one.\n  Maybe draft without --cold, or ask for the part on one mark alone, without \"marks\".");
        }
    }
}
