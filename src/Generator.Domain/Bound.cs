namespace Generator.Domain;

/// <summary>Whether an attacker's grip binds the hero's body, and from where.</summary>
public enum Bound
{
    Free,
    Front,
    Rear,
}
