namespace Generator.Rules.Memories;

/// <summary>What setbacks remembers.</summary>
/// <param name="Setbacks">Setbacks so far.</param>
/// <param name="Pauses">Beats of the story so far; pauses that only get the hero up do not count.</param>
/// <param name="Hurt">One bit for each act that asks for a setback that hurts and has had it.</param>
public sealed record SetbacksMemory(int Setbacks, int Pauses, long Hurt = 0)
{
    public static readonly SetbacksMemory None = new(0, 0);

    /// <summary>The act, from 0, has had the setback that hurts as it asks.</summary>
    public bool HasHurt(int act) => (Hurt & (1L << act)) != 0;
}
