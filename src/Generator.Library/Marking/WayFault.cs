namespace Generator.Library.Marking;

/// <summary>Why a way has no marks.</summary>
/// <param name="IsReached">Some way leads from the one end to the other.</param>
/// <param name="Counts">With how many marks it can be gone.</param>
/// <param name="Length">How long it is, in centimetres; of no meaning where none leads there.</param>
internal sealed record WayFault(bool IsReached, IReadOnlyList<int> Counts, double Length)
{
    /// <summary>Near its beginning there is no place for a mark.</summary>
    public bool NoFirst { get; init; }
}
