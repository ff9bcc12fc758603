namespace Generator.Paperwork.SafetyPapers;

/// <summary>
/// Harm against likelihood. Its colours keep the conditions for a sound matrix (Cox 2008, Risk Analysis 28:497): every risk in a red cell is at
/// least as great as every risk in a green one, no way from green to red leads past yellow, and cells that hold the same risks have the same colour.
/// It orders what to look at first and measures nothing.
/// </summary>
public static class RiskMatrix
{
    /// <summary>Steps on each axis.</summary>
    public const int Size = 4;

    private static readonly RiskLevel[][] Colours =
    [
        [RiskLevel.Green, RiskLevel.Green, RiskLevel.Green, RiskLevel.Green],
        [RiskLevel.Green, RiskLevel.Yellow, RiskLevel.Yellow, RiskLevel.Yellow],
        [RiskLevel.Green, RiskLevel.Yellow, RiskLevel.Red, RiskLevel.Red],
        [RiskLevel.Green, RiskLevel.Yellow, RiskLevel.Red, RiskLevel.Red],
    ];

    public static RiskLevel Of(Harm harm, Likelihood likelihood) => Colours[(int)harm][(int)likelihood];
}
