namespace Generator.Domain;

/// <summary>The signal that tells the hero of an attack.</summary>
public enum Cue
{
    None,
    Voice,
    Sound,
    Touch,
}
