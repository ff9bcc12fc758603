namespace Generator.Solver.Constructing;

/// <summary>How much a window does so that the attacker of a hero moment that is coming stands where a camera sees it as it should.</summary>
/// <param name="Percent">Of the attacks of somebody who is out of sight those, in percent, for which they walk round.</param>
/// <param name="Unseen">What it costs, in points, that they are far out of sight.</param>
internal sealed record Fetching(int Percent, double Unseen)
{
    /// <summary>Half of them, while there may be much else to better.</summary>
    public static readonly Fetching Sometimes = new(50, 0.2);

    /// <summary>Most of them, in a window that is there for the sake of a moment that nobody sees.</summary>
    public static readonly Fetching Eager = new(90, 1);
}
