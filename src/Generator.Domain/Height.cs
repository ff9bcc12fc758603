namespace Generator.Domain;

/// <summary>The height at which a technique lands; none for what lands nowhere.</summary>
public enum Height
{
    None,
    Low,
    Middle,
    High,
}
