namespace Generator.Solver.Proving;

/// <summary>What is known of a brief from the plan of a whole routine.</summary>
public enum Fit
{
    /// <summary>Neither shown: time ran out, or a routine of this length is too long to look at.</summary>
    Unknown,

    /// <summary>A plan of comings, postures, falls and times is possible. Whether there is a routine, with stances, hands and bearings, is another question.</summary>
    Possible,

    /// <summary>No plan is possible, and so no routine: said by two configurations of the solver.</summary>
    Impossible,
}
