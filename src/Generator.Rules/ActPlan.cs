using Generator.Domain;

namespace Generator.Rules;

/// <summary>The acts asked for, laid over the length asked for.</summary>
public sealed class ActPlan
{
    private readonly Length length;
    private readonly int[] until;

    private ActPlan(Length length, IReadOnlyList<Act> acts)
    {
        (this.length, Acts) = (length, acts);
        until = new int[acts.Count];
        for (var (a, sum) = (0, 0); a < until.Length; a++)
        {
            until[a] = sum += acts[a].Percent;
        }
    }

    public IReadOnlyList<Act> Acts { get; }

    /// <summary>The plan that a brief asks for; null when it asks for no acts, or gives no length to lay them over.</summary>
    public static ActPlan? Of(Brief brief) =>
        brief.Acts is not { Count: > 0 } acts || brief.Length is not { } length || (length.Counts is null && length.Moves is null) ? null : new ActPlan(length, acts);

    /// <summary>Act of a move, from 0.</summary>
    /// <param name="start">Its moment in half counts, which decides where the length is given in counts.</param>
    /// <param name="index">Its number from 0, which decides where it is given in moves alone.</param>
    public int ActOf(int start, int index)
    {
        var (at, whole) = length.Counts is { } counts ? (start, counts * HalfCounts.PerCount) : (index, length.Moves!.Value);
        var act = 0;
        while (act < until.Length - 1 && 100 * at >= until[act] * whole)
        {
            act++;
        }

        return act;
    }

    /// <summary>Where an act begins on the same scale: half counts where the length is given in counts, else moves.</summary>
    public double Begins(int act) => act == 0 ? 0 : until[act - 1] * (length.Counts is { } counts ? counts * HalfCounts.PerCount : length.Moves!.Value) / 100.0;
}
