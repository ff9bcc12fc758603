namespace Generator.Domain;

/// <summary>Kinds of fall, as limits name them (<c>no-back-fall</c>).</summary>
public enum FallClass
{
    None,
    ToKnee,
    Back,
    Side,
    Forward,
    ThrownOver,
}
