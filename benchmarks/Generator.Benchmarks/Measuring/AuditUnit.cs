using System.Diagnostics;
using Generator.Rules.Judging;

namespace Generator.Benchmarks.Measuring;

/// <summary>What one audit of 200 moves takes on this machine at this moment: the unit by which results of different machines and days can be compared.</summary>
internal static class AuditUnit
{
    /// <summary>
    /// The runtime optimises in stages and in the background: after some hundred audits one still takes several times as long as after some
    /// thousand. Fewer would make the unit depend on how much a draft before it has already warmed up.
    /// </summary>
    private const int WarmUp = 4000;

    private const int Measured = 401;

    /// <summary>Median in milliseconds, after the code has been optimised; takes a second or two.</summary>
    public static double Milliseconds()
    {
        var book = LongRoutine.Book();
        var scene = LongRoutine.Scene(book);
        var routine = LongRoutine.Of(scene);
        for (var i = 0; i < WarmUp; i++)
        {
            _ = Audit.Of(scene, routine);
        }

        var times = new double[Measured];
        for (var i = 0; i < Measured; i++)
        {
            var clock = Stopwatch.GetTimestamp();
            _ = Audit.Of(scene, routine);
            times[i] = Stopwatch.GetElapsedTime(clock).TotalMilliseconds;
        }

        return Quartiles.Of(times.Select(t => (double?)t))!.Median;
    }
}
