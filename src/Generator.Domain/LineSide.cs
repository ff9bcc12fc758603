namespace Generator.Domain;

/// <summary>Where on the hero an attack comes: at the hero's left, centre or right.</summary>
public enum LineSide
{
    Left,
    Centre,
    Right,
}
