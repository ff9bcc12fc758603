namespace Generator.Domain;

/// <summary>A mark on the floor from which the hero works for a while. X and Y as on the floor.</summary>
/// <param name="Name">What the crew calls it.</param>
/// <param name="X">From the corner between 6 and 9 towards 3 o'clock.</param>
/// <param name="Y">From that corner towards 12.</param>
public sealed record HeroMark(string Name, Centimetres X, Centimetres Y)
{
    /// <summary>Most marks of one fight.</summary>
    public const int Most = 8;

    /// <summary>Its name is that, whatever letters are capitals.</summary>
    public bool IsCalled(string name) => string.Equals(Name, name, StringComparison.OrdinalIgnoreCase);
}
