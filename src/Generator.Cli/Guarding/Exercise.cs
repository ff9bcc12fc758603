using System.Diagnostics;

namespace Generator.Cli.Guarding;

/// <summary>
/// What a waiting worker does before anybody has asked for anything: what is likely to be asked. Code that runs for the first time is slow: without it the first other way of a fight of sixty
/// moves costs a second of processor time more.
/// </summary>
/// <param name="Words">The command line of a search for other ways.</param>
/// <param name="Input">The fight in which to look for them.</param>
internal sealed record Exercise(string[] Words, string Input)
{
    private const string Fight = """
        {
          "brief": { "length": { "moves": 6, "tolerance": 1 }, "hero": { "name": "Hero", "skill": "stunt" }, "attackers": [ { "name": "Ash" } ], "acts": [], "setbacks": 0, "pauses": 0, "ending": { "out": [ "Ash" ] } },
          "attackers": [ { "name": "Ash", "bearing": "11", "distance": 3.5 } ],
          "moves": [
            { "count": "3", "attacker": "Ash", "attack": "walk-in", "technique": "spinning-back-fist-left", "reaction": "head-turns", "stance": "square" },
            { "count": "5", "attacker": "Ash", "technique": "two-on-one-left", "reaction": "arm-caught" },
            { "count": "6", "attacker": "Ash", "technique": "arm-lock-down-right", "reaction": "down-and-held" },
            { "count": "9", "attacker": "Ash", "technique": "ground-punch-left", "reaction": "jolts-in-hold", "stance": "kneeling-right" },
            { "count": "10", "attacker": "Ash", "technique": "submit-right", "reaction": "out-gives-up" }
          ]
        }
        """;

    /// <summary>Two other ways for two moves of a small fight.</summary>
    public static Exercise Small { get; } = new(["alternatives", "-", "--each", "--json", "--number", "2", "--time", "2", "--keep", "1-1", "--keep", "4-5@+2"], Fight);

    /// <summary>After so long no other round is begun, and a round that is still on is ended.</summary>
    private static readonly TimeSpan Enough = TimeSpan.FromSeconds(1.5);

    /// <summary>Rounds after which nothing of it is new.</summary>
    private const int Rounds = 4;

    /// <summary>Does it until it goes easily, and forgets what is found.</summary>
    /// <param name="stop">Ends it, since somebody asks.</param>
    /// <returns>The exit code of the first round.</returns>
    public int Do(CancellationToken stop)
    {
        var clock = Stopwatch.StartNew();
        using var ends = CancellationTokenSource.CreateLinkedTokenSource(stop);
        ends.CancelAfter(Enough);
        var code = Once(ends.Token);
        for (var i = 1; i < Rounds && clock.Elapsed < Enough && !ends.IsCancellationRequested; i++)
        {
            _ = Once(ends.Token);
        }

        return code;
    }

    private int Once(CancellationToken stop) =>
        CommandLine.Run(Words, new Desk { In = new StringReader(Input), Out = TextWriter.Null, Err = TextWriter.Null, Stop = stop });
}
