using System.Globalization;
using System.Text;
using Generator.Benchmarks.Measuring;
using Generator.Domain;
using Generator.Library;

namespace Generator.Benchmarks.Coverage;

/// <summary>What a coverage run found, as a page of Markdown; printed line by line as it comes.</summary>
internal sealed class CoverageReport(Book book, int asks)
{
    /// <summary>No family should make up more of all moves than this, in percent.</summary>
    private const int MostOfOneFamily = 25;

    private readonly StringBuilder text = new();

    public void Head(Machine machine, string command, int briefs, CoverageTally tally)
    {
        Say("# What of the library occurs in drafts");
        Say($"`{command}`, library {book.Version}, {machine.Date}, {machine.Processor}, {machine.Cores} cores, {machine.System}, {machine.Runtime}, load {machine.Load}.");
        Say(Text($"{tally.Drafts} of {briefs} briefs without hero moments drafted, {tally.Moves} moves. What did not occur there was then asked for, as the only hero moment of a short fight."));
    }

    public void Families(CoverageTally tally)
    {
        Say("## Moves by family");
        Rows("| family | % of all moves |\n|---|---|", Enum.GetValues<Family>().OrderByDescending(tally.Of).Select(f => $"| {Low(f)} | {tally.Share(tally.Of(f))} |"));
        var most = Enum.GetValues<Family>().MaxBy(tally.Of);
        Say($"The largest is {Low(most)}; {(100 * tally.Of(most) > MostOfOneFamily * tally.Moves ? "that is over" : "none is over")} {MostOfOneFamily} %. Leaving somebody held {tally.Share(tally.Holds)} %, beside another who holds or is held {tally.Share(tally.Supported)} %.");
        Say("Most frequent: " + string.Join(", ", tally.Techniques.OrderByDescending(p => p.Value).ThenBy(p => p.Key, StringComparer.Ordinal).Take(12).Select(p => Text($"{p.Key} {p.Value}"))) + ".");
        var setbacks = book.Techniques.Where(t => t.Family == Family.Setback).Select(t => t.BaseId).Distinct(StringComparer.Ordinal).OrderByDescending(id => tally.Techniques.GetValueOrDefault(id));
        Say("Setbacks: " + string.Join(", ", setbacks.Select(id => Text($"{id} {tally.Techniques.GetValueOrDefault(id)}"))) + ".");
    }

    /// <summary>What comes when a brief asks for setbacks.</summary>
    public void Setbacks(IReadOnlyList<(int Asked, CoverageTally Tally)> series)
    {
        Say("## When a brief asks for setbacks");
        Say("Sums over short fights of two or three; escapes follow from setbacks that grip, holds and moves beside another come of themselves.");
        Rows("| setbacks asked for | drafts | setbacks | escapes | holds | moves beside another |\n|---|---|---|---|---|---|", series.Select(s => Text($"| {s.Asked} | {s.Tally.Drafts} | {s.Tally.Of(Family.Setback)} | {s.Tally.Of(Family.Escape)} | {s.Tally.Holds} | {s.Tally.Supported} |")));
    }

    /// <summary>What of one kind came only when asked for, and what never came.</summary>
    public void Kind(CoverageKind kind, IReadOnlyList<string> notUnasked, IReadOnlyList<string> never)
    {
        var asked = notUnasked.Except(never, StringComparer.Ordinal).ToList();
        Say($"## {kind.Name[..1].ToUpperInvariant()}{kind.Name[1..]}");
        Say(Text($"{kind.Ids.Count}, of which {kind.Ids.Count - notUnasked.Count} occurred unasked and {asked.Count} when asked for{(asked.Count == 0 ? string.Empty : ": ")}{string.Join(", ", asked)}."));
        Say(never.Count == 0 ? "Never: none." : "Never: " + string.Join("; ", never.Select(id => $"{id} ({kind.Why(id) ?? Text($"{asks} drafts that asked for it found no place for it")})")) + ".");
    }

    public void Write(string path)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        File.WriteAllText(path, text.ToString());
        Console.WriteLine($"Written to {path}");
    }

    private void Rows(string head, IEnumerable<string> rows) => Say(head + "\n" + string.Join('\n', rows));

    private void Say(string paragraph)
    {
        Console.WriteLine(paragraph + "\n");
        text.Append(paragraph).Append("\n\n");
    }

    private static string Low(Family family) => family.ToString().ToLowerInvariant();

    private static string Text(FormattableString words) => words.ToString(CultureInfo.InvariantCulture);
}
