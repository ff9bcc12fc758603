using Generator.Paperwork.Text;
using Generator.Rules.Judging;
using Generator.Testing;

namespace Generator.Paperwork.Tests.Text;

public class AuditReportTests
{
    [Fact]
    public void Findings_of_every_severity_in_the_order_of_the_counts() => Golden.Matches("audit-found", Report(Fights.Found));

    [Fact]
    public void Nothing_found() => Golden.Matches("audit-clean", Report(Fights.NothingFound));

    private static string Report(Verdict verdict) => AuditReport.Of(Fights.SceneOf(Fights.Night), Fights.Night, verdict, Fold.None(verdict));
}
