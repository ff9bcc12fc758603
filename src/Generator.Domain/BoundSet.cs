namespace Generator.Domain;

/// <summary>The bounds in which a technique works.</summary>
[Flags]
public enum BoundSet
{
    None = 0,
    Free = 1,
    Front = 2,
    Rear = 4,
}
