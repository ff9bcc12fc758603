namespace Generator.Domain;

/// <summary>The kinds of technique; each has a file of its own in the library.</summary>
public enum Family
{
    Defence,
    Strike,
    Kick,
    Throw,
    Lock,
    Escape,
    Finish,
    Setback,
    Pause,
}
