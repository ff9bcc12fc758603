using System.Diagnostics;
using System.Globalization;
using Generator.Benchmarks.Measuring;
using Generator.Benchmarks.Peers.MiniZinc;
using Generator.Benchmarks.Stored;
using Newtonsoft.Json;

namespace Generator.Benchmarks.Peers;

/// <summary>Solves stored briefs the other ways, each in a process of its own, at the sizes that those can finish.</summary>
internal static class PeerRun
{
    public const string Pinned = "pinned";

    /// <summary>Sizes at which the other ways are tried.</summary>
    public static readonly IReadOnlyList<string> Sizes = ["6x2", "12x2", "24x3", "40x4"];

    /// <summary>Sizes of which a smaller limit tells as much: they are solved in seconds or show at once that they will not be.</summary>
    private static readonly IReadOnlyList<string> Small = ["6x2", "12x2"];

    /// <summary>Seconds, at most, for the small sizes.</summary>
    public const double SmallTime = 10;

    public static int All(string[] args)
    {
        if (MeasureOptions.Parse(args) is not { } options)
        {
            return 2;
        }

        var path = args.Contains("--out", StringComparer.Ordinal) ? options.Out : Path.Combine(Places.Artifacts, "peers.json");
        var results = Of(options, path);
        foreach (var answer in results.Answers)
        {
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{answer.Brief}, {answer.Peer}: {answer.Status}, {answer.Trace.Count} answers, the first after {(answer.Trace.Count > 0 ? answer.Trace[0].Wall : double.NaN):0} ms, {answer.Agreed} of {answer.Audited} agreed with the audit"));
        }

        Console.WriteLine($"Everything: {path}");
        return 0;
    }

    /// <summary>Saves after each brief.</summary>
    public static PeerResults Of(MeasureOptions options, string path)
    {
        var results = new PeerResults { Machine = Machine.Now(), Gecode = Gecode.Version(), Limit = options.Time, ByProcessor = options.ByProcessor ? Environment.ProcessorCount : 0 };
        if (results.Gecode is null)
        {
            Console.Error.WriteLine(Gecode.HowToInstall);
        }

        var cores = results.ByProcessor.ToString(CultureInfo.InvariantCulture);
        foreach (var family in options.Families.Where(IsTried))
        {
            var limit = (Small.Contains(family.Size, StringComparer.Ordinal) ? Math.Min(SmallTime, options.Time) : options.Time).ToString(CultureInfo.InvariantCulture);
            foreach (var file in family.Files.Take(options.Count))
            {
                var answers = new List<PeerAnswer> { Ask(file, PlainChild.Peer, PlainChild.Word, file, limit, cores, Question.Drafting) };
                if (!IsLarge(family))
                {
                    answers.Insert(0, Ask(file, Pinned, PinnedChild.Word, file));
                }

                if (results.Gecode is not null)
                {
                    answers.AddRange(SearchWay.All.Select(way => Ask(file, GecodeChild.PeerOf(way), GecodeChild.Word, file, limit, cores, way.Choice, Question.Drafting)));
                }

                results = results with { Answers = [.. results.Answers, .. answers] };
                results.Save(path);
            }

            Console.Error.WriteLine($"{family.Name}: the other ways measured");
        }

        return results;
    }

    /// <summary>Where the other ways are not expected to find anything; one kind is enough to show that, and no draft is pinned.</summary>
    private static bool IsLarge(Family family) => string.Equals(family.Size, Sizes[^1], StringComparison.Ordinal);

    private static bool IsTried(Family family) => Sizes.Contains(family.Size, StringComparer.Ordinal) && (!IsLarge(family) || family.Kind == Kind.Loose);

    /// <summary>What a process of its own answers.</summary>
    public static PeerAnswer Ask(string file, string peer, params string[] words)
    {
        using var child = Process.Start(Tools.Again(null, words))!;
        var line = child.StandardOutput.ReadToEnd();
        child.WaitForExit();
        return child.ExitCode == 0 && JsonConvert.DeserializeObject<PeerAnswer>(line) is { } answer
            ? answer
            : new PeerAnswer { Brief = MeasureChild.StoredName(file), Peer = peer, Status = "Failed" };
    }
}
