namespace Generator.Domain;

/// <summary>Left or right, always the performer's own.</summary>
public enum Side
{
    Left,
    Right,
}
