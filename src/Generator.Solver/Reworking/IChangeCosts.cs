using Generator.Rules.Replaying;

namespace Generator.Solver.Reworking;

/// <summary>What it costs to have a move another way than it was. No change costs nothing; every number is 0 or more.</summary>
internal interface IChangeCosts
{
    /// <summary>Cost of one point of roughness, to weigh it against changes.</summary>
    int Point { get; }

    /// <summary>Points of the search that a cost of 100 stands for: how strongly it keeps to what was.</summary>
    double Pull { get; }

    /// <summary>A move that comes too late for its count keeps its distance from the one before; else it comes as soon as it can.</summary>
    bool KeepsGaps { get; }

    /// <summary>An old move becomes this one.</summary>
    /// <param name="old">What it was.</param>
    /// <param name="now">What it is.</param>
    /// <param name="gap">Half counts between the end of the move before and the new one.</param>
    int Swap(OldMove old, in Row now, int gap);

    /// <summary>A move that was not there.</summary>
    int Add(in Row now);

    /// <summary>A move that is no more.</summary>
    int Drop(OldMove old);
}
