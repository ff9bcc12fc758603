using Generator.Paperwork.Html;
using Generator.Paperwork.Text;

namespace Generator.Paperwork.SafetyPapers;

/// <summary>The risk assessment as a page of the house: the hazards, the worst first, with the level in words and signs as well as in colour.</summary>
public static class RiskPage
{
    public static string Of(PaperSource source, IReadOnlyList<Hazard> hazards) =>
        HtmlPage.Of<RiskBody>("Risk assessment: " + Page.Clean(source.Brief.Title), new RiskView(source, hazards), source.Head);
}
