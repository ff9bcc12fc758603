namespace Generator.Rules.Memories;

/// <summary>What setbacks remembers.</summary>
/// <param name="Setbacks">Setbacks so far.</param>
/// <param name="Pauses">Beats of the story so far; pauses that only get the hero up do not count.</param>
public sealed record SetbacksMemory(int Setbacks, int Pauses)
{
    public static readonly SetbacksMemory None = new(0, 0);
}
