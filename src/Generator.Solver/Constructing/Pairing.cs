using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Replaying;

namespace Generator.Solver.Constructing;

/// <summary>
/// How far the two nearest to it are from what a hero moment for two needs: one beside the other within reach, both open at once. Without it the moment
/// is met by luck alone, since nothing else brings a second one there.
/// </summary>
internal sealed class Pairing
{
    /// <summary>What a half hour and a metre away from there cost in points, and the most that a place costs.</summary>
    private const double HalfHour = 0.25, Metre = 0.6, Misplaced = 2;

    /// <summary>What it costs that the second, and the target, is not open.</summary>
    private const double SecondShut = 1, TargetShut = 0.3;

    /// <summary>Half counts for which a second one must still be open to be of use: the target comes in and is opened meanwhile.</summary>
    private const int Lasting = 2;

    private readonly (SecondNeed Two, PostureSet Target)[] needs;
    private readonly int target;
    private readonly int cast;

    private Pairing((SecondNeed Two, PostureSet Target)[] needs, int target, int cast) => (this.needs, this.target, this.cast) = (needs, target, cast);

    /// <summary>Null where the moment does not begin with a technique for two.</summary>
    /// <param name="scene">The brief.</param>
    /// <param name="step">The first move of the moment.</param>
    public static Pairing? For(Scene scene, MomentStep step)
    {
        var techniques = scene.Book.Techniques.Where((_, t) => step.Techniques[t]).ToList();
        return techniques.Count == 0 || techniques.Exists(t => !t.TakesTwo)
            ? null
            : new Pairing([.. techniques.Select(t => (t.Two!, t.Needs)).Distinct()], step.Attacker, scene.Cast);
    }

    /// <summary>In points; 0 where it could be tried at once.</summary>
    public double Owed(FightState state)
    {
        var least = Misplaced + SecondShut + TargetShut;
        for (var a = 0; a < cast; a++)
        {
            if ((target >= 0 && a != target) || !state.Attackers[a].IsActive)
            {
                continue;
            }

            for (var b = 0; b < cast; b++)
            {
                if (b != a && state.Attackers[b].IsActive)
                {
                    least = Math.Min(least, Of(state, state.Attackers[a], state.Attackers[b]));
                }
            }
        }

        return least;
    }

    private double Of(FightState state, AttackerState one, AttackerState other)
    {
        var apart = new Bearing(one.Bearing).Apart(new Bearing(other.Bearing));
        var least = double.MaxValue;
        foreach (var (two, from) in needs)
        {
            var (halfHours, centimetres) = two.Off(apart, other.Distance);
            var place = Math.Min(Misplaced, (HalfHour * halfHours) + (Metre * centimetres / 100.0));
            var shut = IsOpen(other, two.Needs, state.Time + Lasting) ? 0 : SecondShut;
            var closed = from.IsEmpty || IsOpen(one, from, state.Time) ? 0 : TargetShut;
            least = Math.Min(least, place + shut + closed);
        }

        return least;
    }

    private static bool IsOpen(AttackerState attacker, PostureSet needs, int moment) => attacker.PostureAt(moment) is { } posture && needs.Contains(posture);
}
