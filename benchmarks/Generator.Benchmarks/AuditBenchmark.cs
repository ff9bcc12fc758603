using BenchmarkDotNet.Attributes;
using Generator.Domain;
using Generator.Library;
using Generator.Rules;
using Generator.Rules.Judging;
using Generator.Rules.Replaying;

namespace Generator.Benchmarks;

/// <summary>What an audit of 200 moves costs: replay alone is the baseline, so that the ratio tells what the rules add.</summary>
[MemoryDiagnoser]
public class AuditBenchmark
{
    private Book book = null!;
    private Scene scene = null!;
    private Routine routine = null!;

    [GlobalSetup]
    public void Prepare()
    {
        book = LongRoutine.Book();
        scene = LongRoutine.Scene(book);
        routine = LongRoutine.Of(scene);
    }

    [Benchmark(Baseline = true)]
    public IReadOnlyList<Step> ReplayAlone() => Replay.Of(scene, routine);

    [Benchmark]
    public Verdict AuditInWords() => Audit.Of(scene, routine);

    /// <summary>As a search scores: points without words.</summary>
    [Benchmark]
    public int ScoreWithoutWords()
    {
        var state = Replay.Open(scene, routine.Placements);
        var score = Score.Begin(scene, state);
        foreach (var move in routine.Moves)
        {
            var step = Replay.Step(scene, state, Row.Of(move, scene));
            score = score.Observe(scene, step);
            state = step.After;
        }

        return score.Close(scene, state).Points;
    }

    [Benchmark]
    public Scene PrepareScene() => LongRoutine.Scene(book);

    [Benchmark]
    public Book LoadLibrary() => LongRoutine.Book();
}
