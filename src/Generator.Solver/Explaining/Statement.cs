using Generator.Domain;

namespace Generator.Solver.Explaining;

/// <summary>One thing that a brief asks for and could do without.</summary>
/// <param name="Words">In the words of the brief.</param>
/// <param name="Without">The brief when it is dropped; whatever satisfied the brief satisfies this one.</param>
/// <param name="Gentler">The brief when less is asked for, and what that is in words; the smallest concession first.</param>
public sealed record Statement(string Words, Func<Brief, Brief> Without, IReadOnlyList<(string Words, Func<Brief, Brief> Asked)> Gentler)
{
    public Statement(string words, Func<Brief, Brief> without)
        : this(words, without, [])
    {
    }

    /// <summary>What stands in the brief instead when it is dropped, in words.</summary>
    public string Instead { get; init; } = "without: " + Words;

    /// <summary>How near to hand it is: what is wished for is given up before what is given, and that before what keeps people safe.</summary>
    public Nearness Nearness { get; init; }
}
