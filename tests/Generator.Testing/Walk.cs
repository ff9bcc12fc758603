namespace Generator.Testing;

/// <summary>A routine as a file: a walk of 2.50 m from the stove to the sink, where somebody comes who stood 4.50 m from the stove, towards 3.</summary>
public static class Walk
{
    public const string Json = """
        {
          "brief": {
            "length": { "counts": 6, "tolerance": 6 }, "marks": [ { "name": "stove", "x": 3, "y": 4 }, { "name": "sink", "x": 5.5, "y": 4 } ],
            "hero": { "lead": "left" }, "attackers": [ { "name": "Bruno", "bearing": "3", "distance": 4.5 } ], "acts": [], "ending": { "out": [] }
          },
          "moves": [
            { "count": "3", "technique": "walks-across", "to": "sink" },
            { "count": "6&", "attacker": "Bruno", "attack": "swing-right", "technique": "parry-down-left", "reaction": "head-drops" }
          ]
        }
        """;
}
