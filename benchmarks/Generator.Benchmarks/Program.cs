using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Running;
using Generator.Benchmarks;
using Generator.Benchmarks.Coverage;
using Generator.Benchmarks.Drafts;
using Generator.Benchmarks.Measuring;
using Generator.Benchmarks.Peers;
using Generator.Benchmarks.Peers.MiniZinc;
using Generator.Benchmarks.Stored;

// draft: drafts the stored briefs and prints what that took; briefs: writes the first of them anew; families: draws the tight and loose ones that are missing; coverage: what of the library occurs in drafts; anything else: BenchmarkDotNet's own options.
switch (args)
{
    case ["draft", .. var rest]:
        return DraftRun.All(rest);
    case [DraftChild.Word, var file, var seconds, var mode]:
        return DraftChild.Run(file, seconds, mode);
    case ["measure", .. var rest]:
        return MeasureRun.All(rest);
    case [MeasureChild.Word, var file, var seconds, var cores, var warm, var began]:
        return MeasureChild.Run(file, seconds, cores, warm, began);
    case [PlainChild.Word, var file, var seconds]:
        return PlainChild.Run(file, seconds);
    case [GecodeChild.Word, var file, var seconds, var way]:
        return GecodeChild.Run(file, seconds, way);
    case [PinnedChild.Word, var file]:
        return PinnedChild.Run(file);
    case ["peers", .. var rest]:
        return PeerRun.All(rest);
    case ["coverage", .. var rest]:
        return CoverageRun.All(rest);
    case ["briefs"]:
        StoredBriefs.Write();
        return 0;
    case ["families", .. var rest]:
        return FamilyRun.All(rest);
    default:
        var settings = DefaultConfig.Instance.WithArtifactsPath(Places.Artifacts);
        BenchmarkSwitcher.FromAssembly(typeof(AuditBenchmark).Assembly).Run(args, settings);
        return 0;
}
