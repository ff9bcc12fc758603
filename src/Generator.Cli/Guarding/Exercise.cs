namespace Generator.Cli.Guarding;

/// <summary>
/// A small search before anybody has asked for one. Code that runs for the first time is slow: without it the first other way of a fight of sixty moves costs a second of processor time more.
/// </summary>
internal static class Exercise
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

    /// <summary>Looks for two other ways for two moves, and forgets them.</summary>
    /// <param name="stop">Ends it, since somebody asks.</param>
    /// <returns>The exit code.</returns>
    public static int Do(CancellationToken stop) => CommandLine.Run(
        ["alternatives", "-", "--each", "--json", "--number", "2", "--time", "2", "--keep", "1-1", "--keep", "4-5@+2"],
        new Desk { In = new StringReader(Fight), Out = TextWriter.Null, Err = TextWriter.Null, Stop = stop });
}
