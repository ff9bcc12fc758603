using Generator.Domain;

namespace Generator.Solver.Revising;

/// <summary>Somebody goes another way to a move that stays as it was taught.</summary>
/// <param name="Taught">Position in the taught routine, from 0.</param>
/// <param name="Now">Position in the new one.</param>
/// <param name="Who">Numbers of the attackers who go it, and −1 for the hero.</param>
/// <param name="Was">Whereto the way led in a travel move, from where on the clock they came in any other, and how far.</param>
/// <param name="Is">The same now.</param>
public sealed record OtherWay(int Taught, int Now, IReadOnlyList<int> Who, (Bearing Bearing, Centimetres Way) Was, (Bearing Bearing, Centimetres Way) Is)
{
    /// <summary>It is the way of a travel move, from one mark to another.</summary>
    public bool IsTravel => Who.Contains(-1);
}
