namespace Generator.Paperwork.SafetyPapers;

/// <summary>What the page of the risk assessment shows.</summary>
/// <param name="Source">The routine.</param>
/// <param name="Hazards">Its hazards, the worst first.</param>
public sealed record RiskView(PaperSource Source, IReadOnlyList<Hazard> Hazards)
{
    /// <summary>What has to be filled in, in the order of the five steps.</summary>
    public static IReadOnlyList<string> Fields { get; } =
        ["Fight coordinator", "Why competent", "Fight captain", "Who may stop it", "Rehearsal hours agreed", "How all are told", "First aider, kit at", "Hospital, way there", "Controls in place by", "Review on, by"];

    /// <summary>Beside word and colour: the higher, the sharper.</summary>
    public static string SignOf(RiskLevel level) => level switch
    {
        RiskLevel.Green => "●",
        RiskLevel.Yellow => "◆",
        _ => "▲",
    };
}
