using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Running;
using Generator.Benchmarks;
using Generator.Benchmarks.Coverage;
using Generator.Benchmarks.Explaining;
using Generator.Benchmarks.Filling;
using Generator.Benchmarks.Measuring;
using Generator.Benchmarks.Notebooks;
using Generator.Benchmarks.Peers;
using Generator.Benchmarks.Peers.MiniZinc;
using Generator.Benchmarks.Reporting;
using Generator.Benchmarks.Rework;
using Generator.Benchmarks.Stored;
using Generator.Benchmarks.Taste;
using Generator.Benchmarks.Tempos;

// Each command is described in benchmarks/NOTES.md; anything else goes to BenchmarkDotNet. Words that end in -one are the processes in which one brief is measured.
switch (args)
{
    case ["report", .. var rest]:
        return ReportRun.All(rest);
    case ["lower", .. var rest]:
        return LowerRun.All(rest);
    case ["compare", .. var rest]:
        return CompareRun.All(rest);
    case ["measure", .. var rest]:
        return MeasureRun.All(rest);
    case [MeasureChild.Word, var file, var seconds, var cores, var mode, var began]:
        return MeasureChild.Run(file, seconds, cores, mode, began);
    case [PlainChild.Word, var file, var seconds, var cores, var asked]:
        return PlainChild.Run(file, seconds, cores, asked);
    case [GecodeChild.Word, var file, var seconds, var cores, var way, var asked]:
        return GecodeChild.Run(file, seconds, cores, way, asked);
    case [CompletingChild.Word, var file, var seconds]:
        return CompletingChild.Run(file, seconds);
    case [PinnedChild.Word, var file]:
        return PinnedChild.Run(file);
    case ["peers", .. var rest]:
        return PeerRun.All(rest);
    case ["scaling"]:
        return AuditScaling.All();
    case ["words", .. var rest]:
        return WordRun.All(rest);
    case ["coverage", .. var rest]:
        return CoverageRun.All(rest);
    case ["tempos", .. var rest]:
        return TempoRun.All(rest);
    case ["taste", .. var rest]:
        return TasteRun.All(rest);
    case ["briefs"]:
        StoredBriefs.Write();
        return 0;
    case ["families", .. var rest]:
        return FamilyRun.All(rest);
    case ["explain", .. var rest]:
        return ExplainRun.All(rest);
    case ["kinds", .. var rest]:
        return KindsRun.All(rest);
    case ["completing", .. var rest]:
        return CompletingRun.All(rest);
    case ["windows", .. var rest]:
        return WindowRun.All(rest);
    case ["fill", .. var rest]:
        return FillRun.All(rest);
    case ["forms", .. var rest]:
        return FormsRun.All(rest);
    case ["proofs", .. var rest]:
        return ProofRun.All(rest);
    case ["rough", .. var rest]:
        return RoughRun.All(rest);
    case ["rework", .. var rest]:
        return ReworkRun.All(rest);
    default:
        var settings = DefaultConfig.Instance.WithArtifactsPath(Places.Artifacts);
        BenchmarkSwitcher.FromAssembly(typeof(AuditBenchmark).Assembly).Run(args, settings);
        return 0;
}
