using Generator.Paperwork.Teaching;

namespace Generator.Paperwork.HandOffs;

/// <summary>The papers for those who teach, film, insure and cut the fight.</summary>
internal static class HandOffPapers
{
    public static IEnumerable<IPaper> Of(PaperSource source)
    {
        yield return new TextPaper("teaching-plan.txt", "whoever teaches the fight: phrases, speeds, repeats, days", Teaching);
        if (source.Options.From is { } from)
        {
            yield return new TextPaper("rehearsals.ics", "everybody's calendar: the rehearsal days", s => RehearsalCalendar.Of(s.Routine, Plan(s), from));
        }
    }

    private static string Teaching(PaperSource source) => TeachingSheet.Of(source.Scene, source.Steps, Plan(source), source.Options.From);

    private static TeachingPlan Plan(PaperSource source) => TeachingPlan.Of(source.Scene, source.Steps, source.Phrases);
}
