using System.Globalization;
using System.Numerics;
using Generator.Domain;
using Generator.Library.Files;
using Generator.Library.Reading;
using Generator.Rules;
using Generator.Rules.Judging;
using Generator.Solver.Explaining;
using Generator.Solver.Questions;
using Generator.Solver.Refuting;
using Generator.Solver.Tests.Constructing;
using Xunit.Abstractions;

namespace Generator.Solver.Tests.Explaining;

public class WaysOutTests(ITestOutputHelper output)
{
    private const int InSuite = 5;

    /// <summary>Briefs that are looked at; GENERATOR_WAYS_OUT asks for more.</summary>
    private static readonly int Briefs = int.TryParse(Environment.GetEnvironmentVariable("GENERATOR_WAYS_OUT"), NumberStyles.None, CultureInfo.InvariantCulture, out var more) ? more : InSuite;

    /// <summary>
    /// Time for each brief, three times as much where more are asked for; where no way out was found for any of them, as on a machine that is busy with other work, they are asked again with ten times as
    /// much.
    /// </summary>
    private static readonly ExplainOptions[] Options = [.. new[] { 1, 10, 100 }.Select(n => (Briefs > InSuite ? 3 : 1) * n).Select(n => new ExplainOptions { Time = n * TimeSpan.FromSeconds(4), Patience = n * TimeSpan.FromSeconds(0.4) })];

    /// <summary>What is drafted in seconds is given minutes, on whatever machine.</summary>
    private static readonly TimeSpan Most = TimeSpan.FromMinutes(5);

    /// <summary>
    /// Each way out, written down as a brief and read again, is a brief of which a draft with the seed of the explanation finds a routine; a draft says impossible of the brief itself too, with the
    /// same clash, which is none any more without any one of its statements.
    /// </summary>
    [Fact]
    public void Every_way_out_works_when_it_is_applied()
    {
        var (impossible, ways, faults) = Options.Select(Looked).Where((l, i) => l.Ways > 0 || l.Faults.Count > 0 || i == Options.Length - 1).First();
        output.WriteLine($"{impossible} of {Briefs} impossible, {ways} ways out");
        Assert.Empty(faults);
        Assert.True(impossible >= Briefs * 3 / 4 && ways > 0, $"{impossible} impossible, {ways} ways out");
    }

    private (int Impossible, int Ways, List<string> Faults) Looked(ExplainOptions options)
    {
        var (impossible, ways, faults) = (0, 0, new List<string>());
        for (var seed = 0; seed < 5 * Briefs; seed += 5)
        {
            var brief = Read(RandomImpossible.Of(seed));
            Assert.True(brief.IsGood, $"{seed}: {brief.ToText()}");
            var (shown, wrong) = Shown(brief.Value!, seed, options);
            impossible += shown is null ? 0 : 1;
            ways += shown?.GiveUps.Count ?? 0;
            faults.AddRange(wrong.Select(w => $"{seed}: {w}"));
        }

        return (impossible, ways, faults);
    }

    private (BriefExplanation? Shown, List<string> Wrong) Shown(Brief brief, int seed, ExplainOptions options)
    {
        if (Refutations.First(Scene(brief)) is null)
        {
            output.WriteLine($"{seed}: nothing speaks against it");
            return (null, []);
        }

        var wrong = new List<string>();
        var explained = Explain.Of(brief, Drafts.Book, options);
        var drafted = Drafts.Rounds(brief, seed, 1);
        output.WriteLine($"{seed}: {string.Join(" / ", drafted.Clash)} => {string.Join(" | ", explained.GiveUps.Select(g => string.Join("; and ", g.Words)))}");
        if (explained.Brief != Answer.Impossible || drafted.Status != DraftStatus.Impossible || !drafted.Clash.SequenceEqual(explained.Clashes[0]))
        {
            return (explained, [$"explain says {explained.Brief}, draft {drafted.Status}: {string.Join(" / ", drafted.Clash)}"]);
        }

        wrong.AddRange(Needless(brief, drafted.Clash).Select(w => $"the clash needs no {w}"));
        wrong.AddRange(explained.GiveUps.Select(w => (Way: w, Why: WhyNot(w, options.Seed))).Where(w => w.Why is not null).Select(w => $"{string.Join("; and ", w.Way.Words)}: {w.Why}"));
        if (!explained.GiveUps.Select(g => g.Words.Count).Order().SequenceEqual(explained.GiveUps.Select(g => g.Words.Count)))
        {
            wrong.Add("more is to be given up before less");
        }

        return (explained, wrong);
    }

    /// <summary>Statements of a clash without which the others are proven impossible all the same.</summary>
    private static IEnumerable<string> Needless(Brief brief, IReadOnlyList<string> clash)
    {
        brief = brief with { Ending = DraftBrief.Complete(brief, Drafts.Book).Ending };
        var statements = Statements.Of(brief, Drafts.Book.Settle);
        var all = Enumerable.Range(0, statements.Count).Where(i => clash.Contains(statements[i].Words, StringComparer.Ordinal)).Aggregate(0UL, (set, i) => set | (1UL << i));
        Assert.Equal(clash.Count, BitOperations.PopCount(all));
        return Enumerable.Range(0, statements.Count)
            .Where(i => (all & (1UL << i)) != 0 && Explain.Quickly(Statements.Keep(brief, statements, all & ~(1UL << i)), Drafts.Book, CancellationToken.None).Clash.Count > 0)
            .Select(i => statements[i].Words);
    }

    /// <summary>Why a way out leads nowhere; null where it is a brief that the reader takes and that seed drafts. Only a way out that is none takes all of the time.</summary>
    private static string? WhyNot(WayOut way, int seed)
    {
        if (Read(way.Brief) is not { IsGood: true, Value: { } applied })
        {
            return Read(way.Brief).ToText();
        }

        if (Refutations.Reasons(Scene(applied)) is { Count: > 0 } reasons)
        {
            return string.Join(' ', reasons);
        }

        using var first = new CancellationTokenSource();
        var drafted = Drafting.Draft(applied, Drafts.Book, new DraftOptions { Seed = seed, Time = Most }, new FirstRoutine(first), first.Token);
        return drafted.Routine is not { } found ? $"a draft says {drafted.Status}"
            : Audit.Of(new Scene(applied, Drafts.Book), found with { Brief = applied }).IsClean ? null : "the draft is not clean";
    }

    private static Read<Brief> Read(Brief brief) => BriefReader.Parse(new SourceFile("way.brief.json", BriefWriter.Text(brief)), Drafts.Book);

    private static Scene Scene(Brief brief) => new(DraftBrief.Complete(brief, Drafts.Book), Drafts.Book);

    private sealed class FirstRoutine(CancellationTokenSource ends) : IProgress<DraftProgress>
    {
        public void Report(DraftProgress value) => ends.Cancel();
    }
}
