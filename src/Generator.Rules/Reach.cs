namespace Generator.Rules;

/// <summary>A distance band between two bodies in centimetres, and how far the hero may step within the counts.</summary>
/// <param name="Near">Nearest distance at contact.</param>
/// <param name="Far">Farthest distance at contact.</param>
/// <param name="StepIn">Farthest step in.</param>
/// <param name="StepOut">Farthest step out.</param>
public readonly record struct Reach(int Near, int Far, int StepIn, int StepOut)
{
    /// <summary>Nearest distance from which the hero still gets it right, stepping out.</summary>
    public int Least => Near - StepOut;

    /// <summary>Farthest distance from which the hero still gets it right, stepping in.</summary>
    public int Most => Far + StepIn;

    /// <summary>How far the hero steps off the mark for a contact at that distance, towards the partner, below 0 away from them; as far as they may, and besides what they have followed already.</summary>
    public int Step(int distance, int followed) => Math.Clamp(distance - Draw(distance), -StepOut, StepIn + followed);

    /// <summary>The distance after the partner has been drawn into the band.</summary>
    public int Draw(int distance) => Math.Clamp(distance, Near, Math.Max(Near, Far));
}
