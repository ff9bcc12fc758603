using Generator.Rules.Connecting;
using Generator.Rules.Replaying;

namespace Generator.Solver.Constructing;

/// <summary>A hero moment to be reached.</summary>
/// <param name="Steps">Its moves in order.</param>
/// <param name="Earliest">First half count at which the first may start.</param>
/// <param name="Latest">Last half count at which the first may start.</param>
/// <param name="Due">Half count from which it is owed.</param>
/// <param name="Approach">How to bring about what its first move needs; null where the hero needs no bringing.</param>
/// <param name="Pairing">How to bring a second attacker beside its target; null where it is on one alone.</param>
/// <param name="OutOfSight">For each bearing how many half hours it is from one at which a camera sees the moment as it should; null when that is so everywhere or nowhere.</param>
internal sealed record MomentAim(MomentStep[] Steps, int Earliest, int Latest, double Due, Approach? Approach, Pairing? Pairing, int[]? OutOfSight)
{
    /// <summary>Half counts before its window at which the search begins to look for its attacker to be in sight.</summary>
    private const int Foresight = 30;

    /// <summary>How far each bearing is from one at which this attacker should be for its sake, in half hours; null while that does not matter yet or anywhere is right.</summary>
    public int[]? OutOfSightFor(int attacker, int time) => Steps[0].Attacker == attacker && time + Foresight >= Earliest ? OutOfSight : null;

    /// <summary>Its first move may start when this one does.</summary>
    public bool IsInTime(in Row row) => row.Start >= Earliest && row.Start <= Latest;

    /// <summary>Setbacks among its moves.</summary>
    public int Setbacks { get; } = Steps.Count(s => s.IsSetback);

    /// <summary>Beats of the story among its moves.</summary>
    public int Beats { get; } = Steps.Count(s => s.IsBeat);

    /// <summary>The first mark and the last from which it can begin, for the sake of things that stand near some of them.</summary>
    public (int First, int Last) Marks { get; init; } = (0, int.MaxValue);

    /// <summary>How to bring its attacker to the thing at which it is done; null where that is left to luck.</summary>
    public AtThing? Place { get; init; }

    /// <summary>The prop that it needs, or that is in its way; null where none matters.</summary>
    public PropAim? Prop { get; init; }

    /// <summary>Half counts that one more move on the way takes.</summary>
    private const int LeadTime = 8;

    /// <summary>Moves before the first one of the moment; 0 when it can be tried at once, <see cref="FormRoutes.Never"/> when there is no way left.</summary>
    public int MovesBefore(FightState state, int setbacksLeft) => Approach?.MovesBefore(state, setbacksLeft) ?? 0;

    /// <summary>Half count from which it is owed by a hero who has so many moves to go before it.</summary>
    public double DueFrom(int movesBefore) => Due - (LeadTime * movesBefore);
}
