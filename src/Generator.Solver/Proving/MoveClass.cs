using Generator.Domain;

namespace Generator.Solver.Proving;

/// <summary>Moves that a proof need not tell apart, with the widest figures of any of them. Times are half counts.</summary>
/// <param name="Traits">What they have in common.</param>
/// <param name="From">Postures left by the target's last reaction (<see cref="Posture.Ready"/> before the first) in which one of them finds the target; empty without one.</param>
/// <param name="Shortest">Length of the shortest.</param>
/// <param name="Longest">Length of the longest.</param>
/// <param name="Back">Soonest, from the end of the move, at which the target can land an attack again.</param>
/// <param name="Recover">Soonest, from the end of the move, at which the target is ready again where they are.</param>
/// <param name="Open">Longest opening that one leaves, from the end of the move.</param>
/// <param name="Farthest">Farthest from the mark, in centimetres, at which one of them finds its target; unlimited without one.</param>
/// <param name="SecondBack">The same for the one bumped into or taken along.</param>
internal sealed record MoveClass(MoveTraits Traits, PostureSet From, int Shortest, int Longest, int Back, int Recover, int Open, int Farthest, int SecondBack)
{
    /// <summary>The class of both together.</summary>
    public MoveClass With(MoveClass other) => this with
    {
        From = new PostureSet(From.Bits | other.From.Bits),
        Shortest = Math.Min(Shortest, other.Shortest),
        Longest = Math.Max(Longest, other.Longest),
        Back = Math.Min(Back, other.Back),
        Recover = Math.Min(Recover, other.Recover),
        Open = Math.Max(Open, other.Open),
        Farthest = Math.Max(Farthest, other.Farthest),
        SecondBack = Math.Min(SecondBack, other.SecondBack),
    };
}
