namespace Generator.Domain;

/// <summary>The limb that measures a distance band.</summary>
public enum Limb
{
    Arm,
    Leg,
}
