using System.Globalization;
using Generator.Domain;
using Generator.Paperwork.Text;
using Generator.Rules.Judging;

namespace Generator.Paperwork;

/// <summary>
/// What every paper says of itself: title, version, library, the date if one was given, and, in words, whether the audit found anything that
/// forbids performing the routine. Made in one place, so that all papers of one routine say the same.
/// </summary>
/// <param name="Title">Of the routine, on one line.</param>
/// <param name="Version">First digits of the routine's fingerprint: two papers with the same ones speak of the same routine.</param>
/// <param name="Library">The library's version; empty when the routine names none.</param>
/// <param name="From">Date of the first rehearsal day; null when none was given.</param>
/// <param name="Warning">Null when nothing unsafe or broken was found.</param>
public sealed record PaperHead(string Title, string Version, string Library, DateOnly? From, string? Warning)
{
    /// <summary>How every warning begins.</summary>
    public const string Forbidden = "Not to be performed like this";

    /// <summary>The form that stands beside every warning.</summary>
    public const string Sign = "▲!";

    public static PaperHead Of(Routine routine, Verdict verdict, DateOnly? from = null) =>
        new(Page.Clean(routine.Brief.Title), RoutineHash.Short(routine), Page.Clean(routine.LibraryVersion), from, WarningOf(verdict));

    /// <summary>"2027-03-15"; empty when no date was given.</summary>
    public string Date => From?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) ?? string.Empty;

    /// <summary>"Version 1a2b3c4d; library 2026.1-…; rehearsals from 2027-03-15".</summary>
    public string Identity => string.Join("; ", Parts());

    /// <summary>The text of a paper with what this head says above its first ruled line.</summary>
    public string Above(string text)
    {
        var rule = Page.Line('=') + "\n";
        var at = text.IndexOf(rule, StringComparison.Ordinal);
        IEnumerable<string> lines = [.. Page.Wrap(Identity + ".", Page.Width), .. Warning is null ? [] : Framed(Warning)];
        return text.Insert(Math.Max(at, 0), string.Concat(lines.Select(l => l + "\n")));
    }

    /// <summary>The unsafe and broken findings: how many, and at which moves.</summary>
    private static string? WarningOf(Verdict verdict)
    {
        if (verdict.Grave is not { Count: > 0 } grave)
        {
            return null;
        }

        var kinds = grave.GroupBy(f => f.Severity).OrderByDescending(g => g.Key).Select(g => $"{Words.Number(g.Count())} {Words.Of(g.Key)}");
        var moves = grave.Select(f => f.Move).Where(m => m > 0).Distinct().Order().Select(Words.Number).ToList();
        var where = moves.Count switch
        {
            0 => string.Empty,
            1 => $", at move {moves[0]}",
            _ => $", at moves {string.Join(", ", moves)}",
        };
        return $"{Forbidden}: the audit found {string.Join(" and ", kinds)}{where}.";
    }

    private static IEnumerable<string> Framed(string warning)
    {
        yield return Page.Line('!');
        foreach (var line in Page.Hang("!!  ", warning.ToUpper(CultureInfo.InvariantCulture)))
        {
            yield return line;
        }

        yield return Page.Line('!');
    }

    private IEnumerable<string> Parts()
    {
        yield return "Version " + Version;
        if (Library.Length > 0)
        {
            yield return "library " + Library;
        }

        if (From is not null)
        {
            yield return "rehearsals from " + Date;
        }
    }
}
