using Generator.Paperwork.Teaching;
using Generator.Paperwork.Text;

namespace Generator.Paperwork.SafetyPapers;

/// <summary>What the page of the risk assessment shows.</summary>
/// <param name="Source">The routine.</param>
/// <param name="Hazards">Its hazards, the worst first.</param>
public sealed record RiskView(PaperSource Source, IReadOnlyList<Hazard> Hazards)
{
    /// <summary>What has to be filled in, in the order of the five steps.</summary>
    public static IReadOnlyList<string> Fields { get; } =
        ["Fight coordinator", "Why competent", "Fight captain", "Who may stop it", "Rehearsal hours agreed", "How all are told", "First aider, kit at", "Hospital, way there", "Controls in place by", "Review on, by"];

    /// <summary>What all runs of a day ask of everybody, and what a day may ask at the most; hero first.</summary>
    public IEnumerable<(string Name, Load Asked, Load Most)> Loads =>
        Source.Plan.Run.Zip(Source.Plan.Budget, (run, day) => (run * Source.Brief.Safety.Runs, day)).Select((l, p) => (Page.Clean(AllyWords.Everybody(Source.Brief).ElementAt(p).Name), l.Item1, l.day));

    /// <summary>"H1 H4": the hazards of this harm that are as likely before any control.</summary>
    public string Before(Harm harm, Likelihood likelihood) => Numbers(h => h.Harm == harm && h.Likelihood == likelihood);

    /// <summary>The same with guards and information in place.</summary>
    public string After(Harm harm, Likelihood likelihood) => Numbers(h => h.Harm == harm && h.LikelihoodAfter == likelihood);

    private string Numbers(Func<Hazard, bool> of) => string.Join(' ', Hazards.Select((h, i) => (h, Number: "H" + Words.Number(i + 1))).Where(h => of(h.h)).Select(h => h.Number));

    /// <summary>Beside word and colour: the higher, the sharper.</summary>
    public static string SignOf(RiskLevel level) => level switch
    {
        RiskLevel.Green => "●",
        RiskLevel.Yellow => "◆",
        _ => "▲",
    };
}
